/** What a re-check said of a logbook beside the truth about it. */
import { mistakesIn } from "../../../src/adopt/recheck/reporting/cause-words";
import type { Finding } from "../../../src/adopt/recheck/reporting/finding";
import type { MadeLogbook, RowTruth } from "./logbook";
import { rightName } from "./names";
import { rechecked } from "./through-pane";

export interface Score {
  rows: number;
  honest: number;
  accused: number;
  planted: number;
  noticed: number;
  /** Called by its name, alone or beside another possible one. */
  named: number;
  effects: number;
  effectsRight: number;
  lost: number;
  readonly notes: string[];
}

export const noScore = (): Score => ({
  rows: 0,
  honest: 0,
  accused: 0,
  planted: 0,
  noticed: 0,
  named: 0,
  effects: 0,
  effectsRight: 0,
  lost: 0,
  notes: [],
});

/** A planted mistake that moves no figure by more than this is within what conventions do. */
const tolerance = 0.04;

const effectTolerance = 0.01;

function effectIsRight({ lye, right }: RowTruth, findings: readonly Finding[]): boolean {
  const off = lye - right;
  return findings.some(({ effect }) => {
    if (!effect) return Math.abs(off) < Math.abs(right) * 0.001;
    return (
      Math.abs(effect.grams - off) <=
      Math.max(Math.abs(off) * effectTolerance, Math.abs(right) * 0.0005, 0.5)
    );
  });
}

export async function score(made: MadeLogbook, into: Score): Promise<void> {
  const { report, lost } = await rechecked(made);
  into.lost += lost;
  if (lost > 0) into.notes.push(`${String(made.seed)} lost a table`);
  const isOne = made.sheets.length === 1;
  // Totals below the table and the stock beside it are no rows of the logbook.
  for (const { sheet, row, role, mistake } of report.findings) {
    if (made.rows.some(({ titrationRow }) => titrationRow === row)) continue;
    into.accused += 1;
    into.notes.push(
      `${String(made.seed)} ${sheet} ${String(row)} ACCUSED outside: ${role} ${mistake}`,
    );
  }
  for (const truth of made.rows) {
    into.rows += 1;
    const inTitration = report.findings.filter(
      ({ sheet, row }) => sheet === "Log" && row === truth.titrationRow,
    );
    const inBatch = isOne
      ? inTitration
      : report.findings.filter(({ sheet, row }) => sheet === "Batches" && row === truth.batchRow);
    const found = isOne ? inTitration : [...inTitration, ...inBatch];
    const note = (what: string): void => {
      const said = found.map(
        ({ mistake, role, held, should, fromRow, effect }) =>
          `${role} ${mistake}${fromRow === undefined ? "" : ` from ${String(fromRow)}`} ${held}/${should} ${effect?.grams.toFixed(1) ?? ""}`,
      );
      into.notes.push(
        `${String(made.seed)}:${String(truth.titrationRow)} ${what} [${truth.mistake ?? "honest"}] off ${truth.off.toFixed(3)} lye ${truth.lye.toFixed(1)}/${truth.right.toFixed(1)} | ${said.join("; ")}`,
      );
    };
    if (truth.mistake === undefined) {
      into.honest += 1;
      if (found.length > 0) {
        into.accused += 1;
        note("ACCUSED");
      }
      continue;
    }
    if (truth.off <= tolerance) continue;
    into.planted += 1;
    // In two sheets the mistake stands where it was made; the other may only follow from it.
    const place = isOne ? found : truth.isOfTitration ? inTitration : inBatch;
    const strays = isOne
      ? []
      : truth.isOfTitration
        ? inBatch.filter(({ fromRow }) => fromRow === undefined)
        : inTitration;
    if (strays.length > 0) {
      into.accused += 1;
      note("STRAY");
    }
    if (place.length === 0) {
      note("MISSED");
      continue;
    }
    into.noticed += 1;
    const name = rightName[truth.mistake];
    if (place.some((each) => mistakesIn(each).includes(name))) into.named += 1;
    else note("NAME");
    // With a question open an effect is shown only where it does not rest on the answer.
    if (made.leavesOpen && found.every(({ effect }) => effect?.of !== "batch")) continue;
    into.effects += 1;
    if (effectIsRight(truth, found)) into.effectsRight += 1;
    else note("EFFECT");
  }
}
