/**
 * A logbook re-checked: every row from its readings. A generator that stops after some rows and says how
 * far it is, so that whoever runs it can draw, stop or go on. Time grows with the rows and with nothing
 * else.
 */
import { columnsOf, isKnown, type LogbookMapping } from "../recognising/mapping";
import type { SheetCells } from "../recognising/sheet-cells";
import { type CheckedRow, RowChecker } from "./check-row";
import type { Finding, Latent, RecheckReport } from "./finding";
import { latentIn } from "./latent";
import { rowReader } from "./read-rows";
import type { Readings } from "./readings";
import { totalsReader } from "./totals-row";
import { UncheckedRows } from "./unchecked";
import { acidValue, fromNothing, hasTitration } from "./worked";

export interface Logbook {
  readonly mapping: LogbookMapping;
  /** The mapping's sheet. */
  readonly cells: SheetCells;
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

interface LotTitration {
  readonly day: number | undefined;
  readonly of: NonNullable<Readings["ofLot"]>;
}

const rowsAtOnce = 100;

const key = (lot: string): string => lot.trim().toLowerCase();

/** The last titration of a lot, not later than the batch where both days are known. */
function ofLot(known: Map<string, LotTitration[]>, { lot, day }: Readings): Readings["ofLot"] {
  const all = lot === "" ? [] : (known.get(key(lot)) ?? []);
  const before = all.filter(
    (each) => day === undefined || each.day === undefined || each.day <= day,
  );
  return (before[before.length - 1] ?? all[all.length - 1])?.of;
}

function remember(
  known: Map<string, LotTitration[]>,
  { readings, titration, findings }: CheckedRow,
): void {
  if (readings.lot === "" || !hasTitration(readings)) return;
  const first = findings[0];
  const value = (role: "acidValue" | "ffa"): number | undefined => readings.held.get(role)?.value;
  const list = known.get(key(readings.lot)) ?? [];
  list.push({
    day: readings.day,
    of: {
      acidValue: acidValue(titration, {}, fromNothing),
      heldAcidValue: value("acidValue"),
      heldFfa: value("ffa"),
      ...(first ? { mistake: { id: first.mistake, row: readings.row } } : {}),
    },
  });
  known.set(key(readings.lot), list);
}

/** As many rows as tell a logbook's habits, from all over it. */
const rowsToLearn = 60;

function sampleOf(
  { firstRow, lastRow }: LogbookMapping["place"],
  read: (row: number) => Readings | undefined,
  linked: (row: Readings) => Readings["ofLot"],
): Readings[] {
  const step = Math.max(1, Math.floor((lastRow - firstRow + 1) / rowsToLearn));
  const found: Readings[] = [];
  for (let row = firstRow; row <= lastRow; row += step) {
    const readings = read(row);
    if (!readings || isHidden(readings)) continue;
    const lot = hasTitration(readings) ? undefined : linked(readings);
    found.push(lot ? { ...readings, ofLot: lot } : readings);
  }
  return found;
}

const isHidden = ({ unread }: Readings): boolean => unread.some(({ hides }) => hides === "row");

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
    const read = rowReader(mapping, cells);
    const { assay } = read(mapping.place.firstRow);
    if (assay !== undefined) found.add(assay);
  }
  return found.size === 1 ? [...found][0] : undefined;
}

export function* recheck(logbooks: readonly Logbook[]): Generator<Progress, RecheckReport> {
  const of = logbooks.reduce(
    (sum, { mapping: { place } }) => sum + place.lastRow - place.firstRow + 1,
    0,
  );
  const assay = assayIn(logbooks);
  const known = new Map<string, LotTitration[]>();
  const findings: Finding[] = [];
  const latent: Latent[] = [];
  const unchecked = new UncheckedRows();
  let done = 0;
  let rows = 0;
  let figures = 0;
  for (const { mapping, cells } of [...logbooks].sort(titratesFirst)) {
    const readAlone = rowReader(mapping, cells);
    const isTotals = totalsReader(mapping, cells);
    const read = (row: number): Readings | undefined => {
      if (isTotals(row)) return undefined;
      const alone = readAlone(row);
      const isOpen = alone.assay === undefined || alone.assayCancels;
      if (!isOpen || assay === undefined || !hasTitration(alone)) return alone;
      return { ...alone, assay, strengthAssay: assay, assayCancels: false };
    };
    const checker = new RowChecker(mapping);
    checker.learn(sampleOf(mapping.place, read, (row) => ofLot(known, row)));
    const asleep = latentIn(mapping);
    for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
      const readings = read(row);
      for (const { why } of readings?.unread ?? []) unchecked.add(mapping.sheet, row, why);
      if (readings && !isHidden(readings) && (readings.held.size > 0 || hasTitration(readings))) {
        const linked = hasTitration(readings) ? undefined : ofLot(known, readings);
        const checked = checker.check(linked ? { ...readings, ofLot: linked } : readings);
        remember(known, checked);
        findings.push(...checked.findings);
        asleep.look(checked);
        rows += 1;
        figures += checked.figures.filter(({ verdict }) => verdict.kind !== "not-checked").length;
      }
      done += 1;
      if (done % rowsAtOnce === 0) yield { done, of };
    }
    latent.push(...asleep.found());
  }
  return { rows, figures, findings, latent, unchecked: unchecked.found() };
}

/** All at once, for tests and the command line. */
export function recheckAtOnce(logbooks: readonly Logbook[]): RecheckReport {
  const steps = recheck(logbooks);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
