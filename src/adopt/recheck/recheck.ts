/**
 * A logbook re-checked: every row from its readings. A generator that stops after some rows and says how
 * far it is, so that whoever runs it can draw, stop or go on. Time grows with the rows and with nothing
 * else, and what is said of a row does not hang on how many are above it.
 */
import { columnsOf, isKnown, type LogbookMapping } from "../recognising/mapping";
import { measured } from "../recognising/measures/measured";
import { withoutLeft } from "../recognising/by-hand/left-out";
import type { SheetCells } from "../recognising/sheet-cells";
import { cellName } from "../../sheet/cell-name";
import { commasOf } from "./comma-judge";
import { plainly } from "../layouts/plainly";
import type { Finding, RecheckReport } from "./reporting/finding";
import { Lots } from "./lots";
import { rowReader } from "./reading/read-rows";
import { holdsDoses, weighedAlone } from "./reading/weighed-alone";
import { weighedByRule } from "./weighed-by-rule";
import { TableCheck } from "./table-check";
import { Tally } from "./reporting/tally";

export interface Logbook {
  readonly mapping: LogbookMapping;
  /** The mapping's sheet. */
  readonly cells: SheetCells;
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

const rowsAtOnce = 100;

const titrates = ({ mapping }: Logbook): boolean =>
  (["titre", "meanTitre", "correctedTitre"] as const).some(
    (role) => columnsOf(mapping, role).length > 0,
  );
const titratesFirst = (one: Logbook, other: Logbook): number =>
  Number(titrates(other)) - Number(titrates(one));

/** What the other tables say of the lye, where all say the same: a sheet of titrations seldom says it. */
function assayIn(logbooks: readonly Logbook[]): number | undefined {
  const found = new Set<number>();
  for (const { mapping, cells } of logbooks) {
    if (!isKnown(mapping, "assay")) continue;
    const { assay } = rowReader(mapping, cells)(mapping.place.firstRow);
    if (assay !== undefined) found.add(assay);
  }
  return found.size === 1 ? [...found][0] : undefined;
}

/** Sheets whose lots stand across. */
const acrossIn = (logbooks: readonly Logbook[]): ReadonlySet<string> =>
  new Set(
    logbooks.flatMap(({ mapping, cells }) => (cells.isAcross === true ? [mapping.sheet] : [])),
  );

/** Where a finding stands on a sheet whose lots stand across. */
const turnedBack =
  (across: ReadonlySet<string>) =>
  (finding: Finding): Finding =>
    across.has(finding.sheet)
      ? {
          ...finding,
          row: finding.column,
          column: finding.row,
          address: cellName(finding.column, finding.row),
        }
      : finding;

/** What is counted are columns there, and are called so. */
const saidAcross =
  (across: ReadonlySet<string>) =>
  <T extends { readonly sheet: string }>(each: T): T & { readonly isAcross?: true } =>
    across.has(each.sheet) ? { ...each, isAcross: true } : each;

export function* recheck(given: readonly Logbook[]): Generator<Progress, RecheckReport> {
  const hasDoses = given.some(({ mapping }) => holdsDoses(mapping));
  const logbooks = plainly(
    given.map(({ mapping: asGiven, cells: all }) => {
      const cells = withoutLeft(asGiven, all);
      const mapping = measured(asGiven);
      const { commas } = commasOf(hasDoses ? mapping : weighedAlone(mapping), cells);
      const read = { ...mapping, commas };
      return { mapping: hasDoses ? read : weighedByRule(read, cells), cells };
    }),
  );
  const of = logbooks.reduce(
    (sum, { mapping: { place } }) => sum + place.lastRow - place.firstRow + 1,
    0,
  );
  const assay = assayIn(logbooks);
  const lots = new Lots();
  const tally = new Tally();
  const tables: TableCheck[] = [];
  let done = 0;
  for (const { mapping, cells } of [...logbooks].sort(titratesFirst)) {
    const table = new TableCheck(mapping, cells, lots, assay, tally);
    tables.push(table);
    for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
      table.check(row);
      done += 1;
      if (done % rowsAtOnce === 0) yield { done, of };
    }
  }
  const found = tables.map((table) => table.found());
  const across = acrossIn(logbooks);
  const unchecked = found.flatMap((each) => each.unchecked).map(saidAcross(across));
  return {
    rows: found.reduce((sum, { rows }) => sum + rows, 0),
    figures: Object.values(tally.checked).reduce((sum, each) => sum + each, 0),
    checked: tally.checked,
    findings: found.flatMap(({ findings }) => findings).map(turnedBack(across)),
    latent: found.flatMap(({ latent }) => latent),
    unchecked,
    aboveLimit: found.flatMap(({ aboveLimit }) => aboveLimit).map(saidAcross(across)),
    methanol: found.flatMap(({ methanol }) => methanol).map(saidAcross(across)),
    noDose:
      tally.doses > 0
        ? ""
        : logbooks.some(({ mapping }) => holdsDoses(mapping))
          ? (found.map(({ noDose }) => noDose).find((each) => each !== "") ?? "no row holds one")
          : "no column holds one",
    taken: [...new Set(found.flatMap(({ taken }) => taken))],
    cutShort: tally.cutShort,
    ...(logbooks.length > 0 && logbooks.every(({ cells }) => cells.isAcross === true)
      ? { isAcross: true as const }
      : {}),
  };
}

/** All at once, for tests and the command line. */
export function recheckAtOnce(logbooks: readonly Logbook[]): RecheckReport {
  const steps = recheck(logbooks);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
