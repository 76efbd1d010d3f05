/** The findings as they are listed: of one kind or all, in one order or another; and each in words. */
import { counted as many } from "../../sheet/counted";
import type { Finding, RecheckReport } from "../../adopt/recheck/finding";
import { type MistakeId, mistakeOf } from "../../adopt/recheck/mistakes/all";
import type { Order } from "./state";

const size = ({ effect }: Finding): number => Math.abs(effect?.grams ?? 0);

const byRow = (one: Finding, other: Finding): number =>
  one.sheet.localeCompare(other.sheet) || one.row - other.row || one.column - other.column;

const orders: Readonly<Record<Order, (one: Finding, other: Finding) => number>> = {
  row: byRow,
  effect: (one, other) => size(other) - size(one) || byRow(one, other),
  mistake: (one, other) =>
    mistakeOf(one.mistake).name.localeCompare(mistakeOf(other.mistake).name) || byRow(one, other),
};

export const listed = (
  { findings }: RecheckReport,
  only: MistakeId | "all",
  order: Order,
): Finding[] =>
  findings.filter(({ mistake }) => only === "all" || mistake === only).sort(orders[order]);

/** How many there are of each kind, the commonest first. */
export function counted({ findings }: RecheckReport): readonly (readonly [MistakeId, number])[] {
  const counts = new Map<MistakeId, number>();
  for (const { mistake } of findings) counts.set(mistake, (counts.get(mistake) ?? 0) + 1);
  return [...counts].sort(([, one], [, other]) => other - one);
}

const rounded = (value: number): string => {
  const places = Math.abs(value) < 1 ? 2 : Math.abs(value) < 20 ? 1 : 0;
  return Math.abs(value).toFixed(places);
};

/** "329 g of lye too little; 96 % of the acid (5.1 mol) finds no lye" */
export function effectWords({ effect }: Finding): string {
  if (!effect) return "No batch in this row: what it does to the dose is not known.";
  const { grams, acidLeftMoles, acidLeftPercent } = effect;
  if (Math.abs(grams) < 0.5) return "The dose is not affected.";
  const of = effect.of === "kilogram" ? " for each kilogram of oil" : "";
  const much = `${rounded(grams)} g of lye ${grams < 0 ? "too little" : "too much"}${of}`;
  if (acidLeftPercent < 0.5) return `${much}.`;
  return `${much}: ${acidLeftPercent.toFixed(0)} % of the acid (${rounded(acidLeftMoles)} mol) finds no lye.`;
}

const withUnit = (figure: string, unit: string): string =>
  unit === "" || unit === "fraction" ? figure : `${figure} ${unit}`;

const decimalsIn = (figure: string): number => figure.split(".")[1]?.length ?? 0;

/** A figure worked out in the sheet has up to fifteen digits: two more decimals than it should have tell enough. */
const noLongerThan = (held: string, should: string): string => {
  const most = decimalsIn(should) + 2;
  return decimalsIn(held) > most && !Number.isNaN(Number(held))
    ? String(Number(Number(held).toFixed(most)))
    : held;
};

export const figureWords = ({ held, should, unit }: Finding): string =>
  `holds ${withUnit(noLongerThan(held, should), unit)}, should be ${withUnit(should, unit)}`;

/** The whole in one sentence, first what matters. */
export function summaryWords(report: RecheckReport): string {
  const { rows, figures, findings } = report;
  if (figures === 0) return "No figure could be checked.";
  const checked = `${many(rows, "row")}, ${many(figures, "figure")} checked`;
  if (findings.length === 0)
    return `${checked}: all are what they should be, within the digits shown.`;
  const wrongRows = new Set(findings.map(({ sheet, row }) => `${sheet} ${String(row)}`)).size;
  return `${checked}: ${many(findings.length, "figure")} not as ${findings.length === 1 ? "it" : "they"} should be, in ${many(wrongRows, "row")}.`;
}
