/**
 * What the embedded spreadsheet would do and a saved file could not be told: refused before it is done.
 * Data: the engine's own names of its commands, and the sentence for each group.
 */
const structure =
  "Single cells cannot be inserted, deleted or moved here, nor rows by dragging them: insert or delete whole rows or columns.";
const moving =
  "Cells cannot be moved here: what refers to them elsewhere in the file would not follow. Copy them, then empty the old ones.";
const merging =
  "Cells cannot be merged or split here, since that could not be saved: do it in your spreadsheet program.";
const hiding =
  "Rows, columns and sheets cannot be hidden or shown here, since that could not be saved: do it in your spreadsheet program.";
const sheets =
  "A sheet of the file cannot be copied here, since its tables, charts and notes would not come along: copy its cells into a new sheet, or copy it in your spreadsheet program.";
const looks =
  "This format could not be saved, so it is not applied. Bold, italic, underlining, size, colours, lines, alignment, wrapping and number formats are saved.";
const takenAway = "That would take away what hangs on the cells too. To empty them, press Delete.";
const names =
  "A name defined in the file cannot be changed or deleted here. New ones can be added.";
const protection = "Protection cannot be changed here: do that in your spreadsheet program.";
const frozen = "This sheet has frozen rows or columns already, and they stay as they are.";

const heldArray =
  "This cell is part of an array formula that is not worked out here: it stays as the file has it.";
export const sentences = { names, frozen, moving, heldArray } as const;

const sheet = (...ids: readonly string[]): string[] => ids.map((id) => `sheet.command.${id}`);

const groups: readonly (readonly [string, readonly string[]])[] = [
  [
    structure,
    sheet(
      "append-row",
      "insert-range-move-down",
      "insert-range-move-right",
      "insert-range-move-down-confirm",
      "insert-range-move-right-confirm",
      "delete-range-move-left",
      "delete-range-move-up",
      "delete-range-move-left-confirm",
      "delete-range-move-up-confirm",
      "move-rows",
      "move-cols",
      "reorder-range",
      "split-text-to-columns",
      "table-insert-row",
      "table-insert-row-at",
      "table-insert-col",
      "table-insert-column-at",
      "table-remove-row",
      "table-remove-col",
      "table-remove-column-at",
    ),
  ],
  [moving, sheet("move-range")],
  [
    merging,
    sheet(
      "add-worksheet-merge",
      "add-worksheet-merge-all",
      "add-worksheet-merge-vertical",
      "add-worksheet-merge-horizontal",
      "remove-worksheet-merge",
    ),
  ],
  [
    hiding,
    sheet(
      "set-rows-hidden",
      "hide-row-confirm",
      "set-selected-rows-visible",
      "set-specific-rows-visible",
      "set-col-hidden",
      "hide-col-confirm",
      "set-selected-cols-visible",
      "set-col-visible-on-cols",
      "set-worksheet-hidden",
      "set-worksheet-show",
      "set-row-is-auto-height",
      "set-row-data",
      "set-col-data",
      "set-worksheet-right-to-left",
      "toggle-gridlines",
      "set-gridlines-color",
      "set-tab-color",
    ),
  ],
  [sheets, sheet("copy-sheet", "set-workbook-name")],
  [
    looks,
    sheet(
      "set-overline",
      "set-range-subscript",
      "set-range-superscript",
      "set-font-family",
      "set-range-font-family",
      "set-text-rotation",
      "set-worksheet-range-theme-style",
      "set-worksheet-default-style",
      "toggle-cell-checkbox",
    ),
  ],
  [takenAway, sheet("clear-selection-all", "reset-range-text-color")],
  [
    protection,
    sheet(
      "add-range-protection",
      "add-range-protection-from-toolbar",
      "add-range-protection-from-context-menu",
      "add-range-protection-from-sheet-bar",
      "add-worksheet-protection",
      "delete-range-protection",
      "delete-range-protection-from-context-menu",
      "delete-worksheet-protection",
      "delete-worksheet-protection-from-sheet-bar",
      "change-sheet-protection-from-sheet-bar",
      "set-worksheet-protection",
      "set-worksheet-permission-points",
      "set-range-protection-from-context-menu",
      "set-protection",
    ),
  ],
];

export const refusedCommands: ReadonlyMap<string, string> = new Map(
  groups.flatMap(([sentence, ids]) => ids.map((id) => [id, sentence] as const)),
);
