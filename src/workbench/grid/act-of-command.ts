/** What a command of the grid asks to be done to rows, columns or sheets; the grid itself does not do it. */
import type { ICommandInfo, IRange } from "@univerjs/core";
import type { StructuralAct } from "../../xlsx";

/** What a command is seen from. */
export interface SeenFrom {
  /** What is selected, as the last of several. */
  readonly selected: IRange | undefined;
  /** The sheet a command names, or else the one that is shown. */
  readonly sheet: string;
  /** The file has that sheet already: what was added since is the grid's own. */
  readonly isInFile: boolean;
}

type Params = Record<string, unknown>;
type Asks = (params: Params, from: SeenFrom) => StructuralAct | undefined;

const rangeIn = ({ range }: Params, { selected }: SeenFrom): IRange | undefined =>
  (range as IRange | undefined) ?? selected;

const countIn = ({ value }: Params): number => (typeof value === "number" ? Math.floor(value) : 1);

type Lines = "rows" | "columns";

const edges = (lines: Lines, range: IRange): readonly [first: number, last: number] =>
  lines === "rows" ? [range.startRow, range.endRow] : [range.startColumn, range.endColumn];

const insertion = (
  lines: Lines,
  sheet: string,
  before: number,
  count: number,
): StructuralAct | undefined =>
  count > 0 ? { do: `insert-${lines}`, sheet, before, count } : undefined;

const before =
  (lines: Lines): Asks =>
  (params, from) =>
    from.selected && insertion(lines, from.sheet, edges(lines, from.selected)[0], countIn(params));

const after =
  (lines: Lines): Asks =>
  (params, { selected, sheet }) => {
    if (!selected) return undefined;
    const [first, last] = edges(lines, selected);
    const count = "value" in params ? countIn(params) : last - first + 1;
    return insertion(lines, sheet, last + 1, count);
  };

const at =
  (lines: Lines): Asks =>
  (params, from) => {
    const range = rangeIn(params, from);
    if (!range) return undefined;
    const [first, last] = edges(lines, range);
    return insertion(lines, from.sheet, first, last - first + 1);
  };

const deletion =
  (lines: Lines): Asks =>
  (params, from) => {
    const range = rangeIn(params, from);
    if (!range) return undefined;
    const [first, last] = edges(lines, range);
    return { do: `delete-${lines}`, sheet: from.sheet, first, count: last - first + 1 };
  };

const renaming: Asks = ({ name }, { sheet, isInFile }) =>
  isInFile && typeof name === "string" && name !== sheet
    ? { do: "rename-sheet", sheet, name }
    : undefined;

const moving: Asks = ({ order }, { sheet }) =>
  typeof order === "number" ? { do: "move-sheet", sheet, to: order } : undefined;

const removing: Asks = (_, { sheet, isInFile }) =>
  isInFile ? { do: "delete-sheet", sheet } : undefined;

const asks: ReadonlyMap<string, Asks> = new Map(
  Object.entries({
    "insert-row": at("rows"),
    "insert-row-by-range": at("rows"),
    "insert-row-before": before("rows"),
    "insert-multi-rows-above": before("rows"),
    "insert-row-after": after("rows"),
    "insert-multi-rows-after": after("rows"),
    "remove-row": deletion("rows"),
    "remove-row-by-range": deletion("rows"),
    "remove-row-confirm": deletion("rows"),
    "insert-col": at("columns"),
    "insert-col-by-range": at("columns"),
    "insert-col-before": before("columns"),
    "insert-multi-cols-before": before("columns"),
    "insert-col-after": after("columns"),
    "insert-multi-cols-right": after("columns"),
    "remove-col": deletion("columns"),
    "remove-col-by-range": deletion("columns"),
    "remove-col-confirm": deletion("columns"),
    "set-worksheet-name": renaming,
    "set-worksheet-order": moving,
    "remove-sheet": removing,
    "remove-sheet-confirm": removing,
  }).map(([id, ask]) => [`sheet.command.${id}`, ask]),
);

export const asksForAct = (id: string): boolean => asks.has(id);

export const actOfCommand = ({ id, params }: ICommandInfo, from: SeenFrom) =>
  asks.get(id)?.((params ?? {}) as Params, from);
