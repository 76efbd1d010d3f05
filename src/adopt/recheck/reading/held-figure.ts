/** A figure that a sheet holds, with the half of its last shown digit: it says no more than that. */
import type { RoleId } from "../../recognising/roles";
import { timesOwn } from "../../recognising/measures/measured";
import type { HeldCell } from "../../recognising/sheet-cells";
import { figureFrom, numberFrom, type Commas } from "../../recognising/typed-number";

export interface HeldFigure {
  readonly role: RoleId;
  readonly column: number;
  /** In the role's own scale: percent as percent, masses in g, volumes in L. */
  readonly value: number;
  readonly halfDigit: number;
  /** It was counted in cups or spoons, or only weighed: half of its last digit is as near as that is. */
  readonly isCoarse: boolean;
  /** "" when it was typed. */
  readonly formula: string;
  /** Where it stands, and the figure as it is written there: shown in sentences alone (shownIn). */
  readonly cell: HeldCell;
  readonly typed: number;
}

function readFormat(format: string): number | undefined {
  const first = (format.split(";")[0] ?? "").replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "");
  if (!/[0#]/.test(first) || /[eE]\+/.test(first)) return undefined;
  return (/\.([0#?]+)/.exec(first)?.[1] ?? "").length;
}

const formatsRead = new Map<string, number | undefined>();

/** Decimals that a number format shows; undefined when it shows what there is. */
function decimalsOfFormat(format: string): number | undefined {
  if (!formatsRead.has(format)) formatsRead.set(format, readFormat(format));
  return formatsRead.get(format);
}

/** Figures worked out by a formula and not rounded have all digits; a few digits are a rounded figure. */
const fewDigits = 6;

function halfDigitOf({ formula, format }: HeldCell, own: number, ofColumn: number): number {
  const byFormat = decimalsOfFormat(format);
  const decimals = Math.max(own, ofColumn);
  const byValue = formula === "" || decimals <= fewDigits ? 0.5 * 10 ** -decimals : 0;
  // In "0.00%" the digits shown are those of the percent.
  const scale = format.includes("%") ? 100 : 1;
  return Math.max(byValue, byFormat === undefined ? 0 : (0.5 * 10 ** -byFormat) / scale);
}

/** A role's column or constant, as far as its figures hang on it. */
export interface InUnit {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly times?: number;
  readonly within?: number;
}

/** What a figure in a unit is multiplied by to stand in the role's own scale. */
export function scaleOf(of: InUnit, isPercentFormat: boolean): number {
  const { role, unit } = of;
  if (role === "ffa" || role === "assay" || role === "ffaUncertainty") {
    return unit === "fraction" || isPercentFormat ? 100 : 1;
  }
  if (isPercentFormat && (role === "baseCharge" || unit?.startsWith("%"))) return 100;
  return timesOwn(of);
}

/** Rows looked at to learn how many decimals a column is kept in. */
const rowsLookedAt = 400;

/**
 * Decimals in which a column is kept: a cell drops the zeros at the end of what was typed, so that the
 * 5 among 4.98 and 5.12 means 5.00. Figures with all their digits were not typed. Three quarters of the column have as many or fewer.
 */
export function decimalsOfColumn(cells: readonly HeldCell[], commas: Commas): number {
  const decimals = cells
    .slice(0, rowsLookedAt)
    .flatMap(({ value, formula }) => (formula === "" ? [numberFrom(value, commas)] : []))
    .flatMap((typed) => (typed && typed.decimals <= fewDigits ? [typed.decimals] : []))
    .sort((a, b) => a - b);
  return decimals[Math.floor(decimals.length * 0.75)] ?? 0;
}

/** As the cell shows it. */
export function shownIn(
  { value, format }: Pick<HeldCell, "value" | "format">,
  figure: number,
): string {
  if (typeof value === "string") return value.trim();
  const decimals = decimalsOfFormat(format);
  if (format.includes("%")) return String(Number((figure * 100).toPrecision(8)));
  if (decimals === undefined) return String(Number(figure.toPrecision(8)));
  return figure.toFixed(Math.min(8, decimals));
}

/** The figure of a cell; undefined when it holds none (words, words beside a figure, an error, nothing, 0). */
export function heldFigure(
  cell: HeldCell,
  of: InUnit,
  column: number,
  commas: Commas,
  { decimals = 0, step }: { readonly decimals?: number; readonly step?: number | undefined } = {},
): HeldFigure | undefined {
  const typed = figureFrom(cell.value, commas, of.unit);
  if (!typed || typed.value === 0) return undefined;
  const isPercentFormat = typeof cell.value === "number" && cell.format.includes("%");
  const scale = scaleOf(of, isPercentFormat);
  const half = halfDigitOf(cell, typed.decimals, decimals);
  return {
    role: of.role,
    column,
    value: typed.value * scale,
    halfDigit: Math.max(half, step ?? 0, (of.within ?? 0) * typed.value) * scale,
    isCoarse: step !== undefined || (of.within ?? 0) > 0,
    formula: cell.formula,
    cell,
    typed: typed.value,
  };
}
