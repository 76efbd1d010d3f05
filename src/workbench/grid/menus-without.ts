/** What is taken out of the grid's menus, since it would be refused: see refused-commands.ts. */

/** Single cells that shift others, and a copy of a sheet. */
const withoutActs = [
  "insert-range-move-down-confirm",
  "insert-range-move-right-confirm",
  "delete-range-move-left-confirm",
  "delete-range-move-up-confirm",
  "copy-sheet",
];

export const menusWithout = Object.fromEntries(
  withoutActs.map((id) => [`sheet.command.${id}`, { hidden: true }] as const),
);
