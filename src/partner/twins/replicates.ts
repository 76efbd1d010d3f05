/** Twins of the functions about replicates. */
import { fewest, most } from "../../core/replicates/replicates-needed";
import { intervalLabel, noRecord, noSpread, noTest } from "../../functions/replicates/spread";
import { judgementText, markText } from "./shared/judgement-text";
import { listOf } from "./shared/list";
import { nothing } from "./shared/pairs";
import { replicateColumns } from "./shared/replicate-columns";
import { exactly } from "./shared/shown-text";
import { atMost, spoken, text, when } from "./shared/text";
import { verdictText } from "./shared/verdict-text";
import type { Work } from "./shared/work";

/** Readings as typed have 15 digits: a smaller difference is a rounding error of the program's own. */
const rounding = "5E-16";

const concordant: Work = (reading) => {
  const readings = listOf(reading, "readings");
  const limit = reading.figure("limit");
  const largest = `MAX(${readings.range.text})`;
  const beyond = `${largest}-${readings.least}-${limit}`;
  reading.needs(`${readings.count}<2`);
  return reading.answer(`${beyond}<=${rounding}*${largest}`);
};

const outliers: Work = (reading) => {
  const columns = replicateColumns(reading);
  const { rows = 1, columns: width = 1 } = reading.call.argument("readings") ?? {};
  if (!columns) return nothing;
  const found = judgementText(reading, columns);
  return reading.table(
    Array.from({ length: rows }, (_, down) =>
      Array.from({ length: width }, (__, across) =>
        markText(columns, found, down * width + across),
      ),
    ),
  );
};

const spread: Work = (reading) => {
  const columns = replicateColumns(reading);
  if (!columns) return nothing;
  const { read, judged, count, mean, deviation, confidence, risk } = columns;
  const found = judgementText(reading, columns);
  const { test, hasRecord, allowed, usualFreedom } = found;
  const ifSpread = (formula: string) => when(`${count}<2`, text(noSpread), formula);
  const ifTested = (formula: string) => when(test.isTested, formula, text(noTest));
  const ifRecord = (formula: string) => when(hasRecord, formula, text(noRecord));
  const ifJudged = (formula: string) => ifRecord(when(`${count}<2`, text(noTest), formula));
  const range = `MAX(${judged.text})-MIN(${judged.text})`;
  const halfWidth = `TINV(${risk},${count}-1)*${deviation}/SQRT(${count})`;
  const interval = spoken(intervalLabel, exactly(reading, confidence));
  return reading.table([
    [undefined, count],
    [undefined, mean],
    [undefined, ifSpread(deviation)],
    [undefined, ifSpread(`${deviation}/${mean}*100`)],
    [undefined, ifSpread(range)],
    [interval, ifSpread(halfWidth)],
    [undefined, ifTested(`INDEX(${read.text},${test.place})`)],
    [undefined, ifTested(test.plain)],
    [undefined, ifTested(test.graduated)],
    [undefined, ifTested(test.critical)],
    [undefined, ifTested(test.probability)],
    [undefined, verdictText(reading, columns, found)],
    [undefined, ifJudged(test.farthest)],
    [undefined, ifJudged(allowed)],
    [undefined, ifRecord(usualFreedom)],
  ]);
};

const verdict: Work = (reading) => {
  const columns = replicateColumns(reading);
  if (!columns) return nothing;
  return reading.answer(verdictText(reading, columns, judgementText(reading, columns)));
};

/** From half the range down to one. */
const halvings = [64, 32, 16, 8, 4, 2, 1];

const replicates: Work = (reading) => {
  const deviation = reading.figure("standardDeviation");
  const halfWidth = reading.figure("halfWidth");
  const confidence = reading.figure("confidencePercent");
  const width = (n: string) => `TINV((100-${confidence})/100,${n}-1)*${deviation}/SQRT(${n})`;
  // The width falls with every titration, so that halving the doubt finds the number.
  const tooFew = halvings.reduce(
    (known, step) => {
      const more = `(${known}+${step})`;
      const isTooFew = `NOT(${atMost(width(more), halfWidth)})`;
      const next = when(`${more}>${most}`, known, when(isTooFew, more, known));
      return reading.call.helper(
        `so many are too few, give or take ${step - 1}`,
        reading.guarded(next),
      );
    },
    String(fewest - 1),
  );
  reading.needs(`${tooFew}=${most}`);
  return reading.answer(`${tooFew}+1`);
};

export const replicateTwins = {
  OUTLIERS: outliers,
  VERDICT: verdict,
  CONCORDANT: concordant,
  SPREAD: spread,
  REPLICATES: replicates,
};
