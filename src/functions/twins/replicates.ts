/** Twins of the functions about replicates. */
import { fewest, most } from "../../core/replicates/replicates-needed";
import { intervalLabel, noSpread, noTest } from "../replicates/spread";
import { listOf } from "./shared/list";
import { nothing } from "./shared/pairs";
import { outlierText } from "./shared/outlier-text";
import { replicateColumns } from "./shared/replicate-columns";
import { atMost, row, spoken, text, when } from "./shared/text";
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
  const { isTested, place, graduated, critical } = outlierText(reading, columns);
  const isSuspect = reading.call.helper(
    "is that reading suspect?",
    reading.guarded(`AND(${isTested},${graduated}>${critical})`),
  );
  const mark = (position: number): string => {
    const suspect = `AND(${isSuspect},${place}=${position + 1})`;
    const cell = columns.read.cell(position, 0);
    return when(`${cell}=""`, '""', when(suspect, text("suspect"), text("agrees")));
  };
  return reading.table(
    Array.from({ length: rows }, (_, down) =>
      Array.from({ length: width }, (__, across) => mark(down * width + across)),
    ),
  );
};

const spread: Work = (reading) => {
  const columns = replicateColumns(reading);
  if (!columns) return nothing;
  const { read, judged, count, mean, deviation, confidence, risk } = columns;
  const test = outlierText(reading, columns);
  const ifSpread = (formula: string) => when(`${count}<2`, text(noSpread), formula);
  const ifTested = (formula: string) => when(test.isTested, formula, text(noTest));
  const range = `MAX(${judged.text})-MIN(${judged.text})`;
  const halfWidth = `TINV(${risk},${count}-1)*${deviation}/SQRT(${count})`;
  const interval = spoken(intervalLabel, confidence);
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
    [undefined, verdictText(reading, columns, test)],
  ]);
};

const verdict: Work = (reading) => {
  const columns = replicateColumns(reading);
  if (!columns) return nothing;
  const test = outlierText(reading, columns);
  return reading.answer(verdictText(reading, columns, test));
};

const replicates: Work = (reading) => {
  const deviation = reading.figure("standardDeviation");
  const halfWidth = reading.figure("halfWidth");
  const confidence = reading.figure("confidencePercent");
  const freedoms = row(Array.from({ length: most - fewest + 1 }, (_, place) => String(place + 1)));
  const widths = `TINV((100-${confidence})/100,${freedoms})*${deviation}/SQRT(1+${freedoms})`;
  const tooFew = reading.call.helper(
    `numbers of titrations from ${fewest} to ${most} that are too few`,
    reading.guarded(`SUMPRODUCT(1-(${atMost(widths, halfWidth)}))`),
  );
  reading.needs(`${tooFew}=${most - fewest + 1}`);
  return reading.answer(`${fewest}+${tooFew}`);
};

export const replicateTwins = {
  OUTLIERS: outliers,
  VERDICT: verdict,
  CONCORDANT: concordant,
  SPREAD: spread,
  REPLICATES: replicates,
};
