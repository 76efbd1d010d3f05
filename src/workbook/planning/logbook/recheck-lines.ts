/** One finding of a re-check as cells: what is held and what should be, live where a formula says it. */
import type { Content } from "../../../sheet/port";
import { type Sources, sourcesOf } from "../../../adopt/added-columns/sources";
import { shouldHold } from "../../../adopt/added-columns/titre-formulas";
import { causeWords } from "../../../adopt/recheck/reporting/cause-words";
import type { Finding } from "../../../adopt/recheck/reporting/finding";
import { isDose } from "../../../adopt/recheck/mistakes/mistake";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { doseBasisOf } from "../../../adopt/recognising/basis";
import { heldCell } from "../../../adopt/recognising/sheet-cells";
import { sheetPrefix } from "../../../sheet/sheet-prefix";

/** A logbook, and where its formulas take their figures from; worked out once for all its findings. */
export interface Source {
  readonly logbook: Logbook;
  readonly sources: Sources;
}

/** An acid figure that the row holds may be the one that is wrong: nothing right is worked out from it. */
export function sourceOf(logbook: Logbook, onSheet = sheetPrefix(logbook.mapping.sheet)): Source {
  const sources = sourcesOf(logbook.mapping, logbook.cells, onSheet);
  return { logbook, sources: { ...sources, heldAcidValue: undefined, heldFfa: undefined } };
}

/** The finding's own logbook: a sheet may hold two. */
export const isFrom = (
  { sheet, column }: Finding,
  { logbook: { mapping } }: Pick<Source, "logbook">,
): boolean =>
  mapping.sheet === sheet &&
  column >= mapping.place.firstColumn &&
  column <= mapping.place.lastColumn;

const value = (of: string | number, format?: string): Content => ({
  kind: "value",
  value: of,
  ...(format === undefined ? {} : { format }),
});
const formula = (text: string, format?: string): Content => ({
  kind: "formula",
  formula: text,
  ...(format === undefined ? {} : { format }),
});
const figure = (of: number | undefined, places: number): Content =>
  of === undefined ? value("") : value(Number(of.toFixed(places)));

/** As many decimals as the figure in the report has. */
function formatOf({ should }: Finding): string {
  const places = /\.(\d+)/.exec(should)?.[1]?.length ?? 0;
  return places === 0 ? "0" : `0.${"0".repeat(places)}`;
}

/** Columns kept in these units hold what our functions answer. */
const ourUnits = new Set(["", "g", "mL", "mg KOH/g", "%"]);

/** A percentage that is shown as one holds a fraction. */
const isFraction = ({ logbook: { cells, mapping } }: Source, { column }: Finding): boolean =>
  heldCell(cells, mapping.place.firstRow, column).format.includes("%");

function liveFormula(finding: Finding, source: Source): string | undefined {
  const { role, unit, row } = finding;
  const isOurs =
    role === "oilMass" ? unit === "kg" : ourUnits.has(unit) && (unit !== "%" || role === "ffa");
  const column = source.logbook.mapping.columns.find((each) => each.column === finding.column);
  // Our functions answer what is weighed.
  const isPure = column !== undefined && doseBasisOf(column) === "pure" && isDose(role);
  const part =
    isOurs && !isPure && !isFraction(source, finding)
      ? shouldHold(role, source.sources)
      : undefined;
  return part && `=${part(row + 1)}`;
}

/** "358 or 363": a question about the lye is open. */
const isOneFigure = ({ should }: Finding): boolean => !Number.isNaN(Number(should));

/** Live where there is a formula for it in the column's unit; else what was found. */
function shouldBe(finding: Finding, source: Source | undefined): Content {
  const live = source && liveFormula(finding, source);
  if (live) return formula(live, formatOf(finding));
  return isOneFigure(finding)
    ? value(Number(finding.should), formatOf(finding))
    : value(finding.should);
}

/**
 * The same for a cell of the logbook itself: in the format of its column, a fraction where it shows a
 * percentage. Where no one figure is right, the cell says why.
 */
export function rightContent(finding: Finding, source: Source, format: string): Content {
  if (finding.oddInput !== undefined) return value(finding.oddInput);
  const live = liveFormula(finding, source);
  if (live) return formula(live, formatOf(finding));
  if (!isOneFigure(finding))
    return value(
      `${finding.should}: say in Check columns whether grams of lye are pure or as weighed.`,
    );
  return format.includes("%")
    ? value(Number((Number(finding.should) / 100).toPrecision(12)), format)
    : value(Number(finding.should), formatOf(finding));
}

export function lineOf(finding: Finding, at: number, source: Source | undefined): Content[] {
  const { effect, fromRow, oddInput } = finding;
  const row = String(at + 1);
  const cause = causeWords(finding);
  const from = fromRow === undefined ? "" : `, in row ${String(fromRow)} of the titrations`;
  const ofIt = effect?.together?.ofIt;
  const part = ofIt === undefined ? "" : `, ${ofIt.toFixed(0)} g of the lye that is off`;
  const held = sheetPrefix(finding.sheet) + finding.address;
  return [
    value(finding.address),
    value(finding.row + 1),
    value(finding.label),
    value(finding.heading),
    value(finding.unit),
    formula(`=${held}`, formatOf(finding)),
    shouldBe(finding, source),
    isOneFigure(finding) ? formula(`=F${row}-G${row}`, formatOf(finding)) : value(""),
    value(cause + from + part + (oddInput === undefined ? "" : `. ${oddInput}`)),
    figure(effect?.grams, 0),
    figure(effect?.acidLeftMoles, 2),
    figure(effect?.acidLeftPercent, 0),
  ];
}
