/** What a file is told of one cell: from what the grid held when it was opened, and what it holds now. */
import type { Area, CellValue, Content, SetCell } from "../../xlsx";
import type { GivenCell } from "../engine/cells";
import type { DateShift } from "./dates";
import { dressOf } from "./cell-dress";
import type { SheetPair } from "./sheet-edits";
import type { CellState } from "./grid-state";
import type { SpillState } from "./spill-state";

function fileValue(value: GivenCell): CellValue {
  if (value === null) return "";
  if (!isFigure(value)) return { error: "#NUM!" };
  return typeof value === "object" ? { error: value.basicValue } : value;
}

const errorOf = (value: GivenCell): string | undefined =>
  typeof value === "object" && value !== null ? value.basicValue : undefined;

/** Not a number, and infinity, are no figures: a file cannot hold them. */
const isFigure = (value: GivenCell): boolean => typeof value !== "number" || Number.isFinite(value);

/** Results are worked out anew at every opening: the last digit may come out otherwise. */
const lastDigit = 1e-14;

function isSame(a: GivenCell, b: GivenCell): boolean {
  if (typeof a === "number" && typeof b === "number") {
    if (!isFigure(a) || !isFigure(b)) return false;
    return a === b || Math.abs(a - b) <= lastDigit * Math.max(Math.abs(a), Math.abs(b));
  }
  if (typeof a === "object" || typeof b === "object")
    return a === b || (errorOf(a) !== undefined && errorOf(a) === errorOf(b));
  return a === b;
}

/** A cell now and before, on the sheet now and before; `array` is that of the file. */
export interface Compared {
  readonly row: number;
  readonly column: number;
  readonly before: CellState;
  readonly now: CellState;
  readonly spillBefore: SpillState | undefined;
  readonly spillNow: SpillState | undefined;
  readonly array: Area | undefined;
  /** Nothing was worked out to its end: no result is told to the file. */
  readonly isStopped: boolean;
}

const sizeOf = (spill: SpillState | undefined): string =>
  `${String(spill?.rows ?? 1)}x${String(spill?.columns ?? 1)}`;

const isSameSize = (spill: SpillState | undefined, area: Area): boolean =>
  (spill?.rows ?? 1) === area.rows && (spill?.columns ?? 1) === area.columns;

export class CellEdits {
  /** Formulas without a result that could be told: the file keeps the one of before, or has none. */
  leftAsTheyWere = 0;
  /** Cells whose look changed in a way that files are not told of. */
  looksLost = 0;

  constructor(
    private readonly sheets: SheetPair,
    private readonly shift: DateShift,
  ) {}

  private get sheet(): string {
    return this.sheets.now.name;
  }

  of(compared: Compared): SetCell[] {
    const { row, column, now } = compared;
    const { dress, losesSome } = dressOf(this.sheets, compared);
    if (losesSome) this.looksLost += 1;
    const contents = this.contents(compared);
    const own = contents.find((each) => each.row === row && each.column === column);
    const isDressed = Object.keys(dress).length > 0;
    if (!own && !isDressed) return contents;
    const content: Content = own?.content ?? { kind: "keep" };
    const base = now.fileLook;
    return [
      {
        do: "set-cell",
        sheet: this.sheet,
        row,
        column,
        content,
        ...dress,
        ...(base === undefined || compared.before.style ? {} : { base }),
      },
      ...contents.filter((each) => each !== own),
    ];
  }

  private edit(row: number, column: number, content: Content): SetCell {
    return { do: "set-cell", sheet: this.sheet, row, column, content };
  }

  private contents(compared: Compared): SetCell[] {
    const { row, column, before, now, spillNow } = compared;
    if (now.formula === "") {
      if (before.formula === "" && isSame(before.value, now.value)) return [];
      if (now.value === null) return [this.edit(row, column, { kind: "nothing" })];
      const value = this.shift(fileValue(now.value), now.style?.n?.pattern);
      return [this.edit(row, column, { kind: "value", value })];
    }
    const isHeld = now.isHeld || now.isDoubtful || compared.isStopped;
    if (now.formula !== before.formula) {
      return [isHeld ? this.withoutResult(compared) : this.formula(compared)];
    }
    if (isHeld) {
      const isAnother = now.isDoubtful && !now.isHeld && !isSame(before.value, now.value);
      if (!isAnother) return [];
      // what it came to before does not hold any more: no figure is better than that one
      const isAlone = compared.array === undefined && spillNow === undefined;
      if (isAlone) return [this.withoutResult(compared)];
      this.leftAsTheyWere += 1;
      return [];
    }
    if (compared.array === undefined) {
      if (spillNow === undefined) return this.result(compared);
      // one value is meant in the file where the grid answers with many
      if (sizeOf(spillNow) === sizeOf(compared.spillBefore)) return [];
      return [this.formula(compared)];
    }
    if (isSameSize(spillNow, compared.array)) return this.results(compared);
    if (sizeOf(spillNow) === sizeOf(compared.spillBefore)) return [];
    return [this.formula(compared)];
  }

  private withoutResult({ row, column, now: { formula } }: Compared): SetCell {
    this.leftAsTheyWere += 1;
    return this.edit(row, column, { kind: "formula", formula, result: undefined });
  }

  private formula(compared: Compared): SetCell {
    if (!isFigure(compared.now.value)) return this.withoutResult(compared);
    const { row, column, now, before, spillNow } = compared;
    const pattern = now.style?.n?.pattern;
    const value = (given: GivenCell): CellValue => this.shift(fileValue(given), pattern);
    // the same formula that answers over its own cell alone now may spill again another time
    const wasMany = compared.array !== undefined || compared.spillBefore !== undefined;
    const alone = wasMany && now.formula === before.formula ? [[now.value]] : undefined;
    const spilled = spillNow?.values ?? alone;
    return this.edit(row, column, {
      kind: "formula",
      formula: now.formula,
      result: value(now.value),
      ...(spilled ? { spilled: spilled.map((cells) => cells.map(value)) } : {}),
    });
  }

  private result({ row, column, before, now }: Compared): SetCell[] {
    if (isSame(before.value, now.value)) return [];
    if (errorOf(now.value) === "#NAME?" || !isFigure(now.value)) {
      this.leftAsTheyWere += 1;
      return [];
    }
    const value = this.shift(fileValue(now.value), now.style?.n?.pattern);
    return [this.edit(row, column, { kind: "result", value })];
  }

  private results(compared: Compared): SetCell[] {
    const { row, column, now, spillBefore, spillNow } = compared;
    if (!spillNow) return this.result(compared);
    return spillNow.values.flatMap((cells, down) =>
      cells.flatMap((value, across) => {
        if (isSame(spillBefore?.values[down]?.[across] ?? null, value)) return [];
        const shown = this.shift(fileValue(value), now.style?.n?.pattern);
        return [this.edit(row + down, column + across, { kind: "result", value: shown })];
      }),
    );
  }
}
