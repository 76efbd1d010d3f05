/** The series of the task, of what is chosen: which bottle, which kept oil. */
import { chargeSeries, yieldSeries } from "../../workbook/over-time/batch-series";
import { blankSeries } from "../../workbook/over-time/blank-series";
import { checkOils, checkOilSeries } from "../../workbook/over-time/check-oil-series";
import { scatterSeries } from "../../workbook/over-time/scatter-series";
import { fuelSeries } from "../../workbook/over-time/fuel-series";
import type { Found, Series } from "../../workbook/over-time/series";
import { strengthSeries } from "../../workbook/over-time/strength-series";
import type { TitrantHistory } from "../../workbook/over-time/titrant-history";
import type { OverTimeRecord } from "./read-record";

export interface Chosen {
  /** The bottle and its base; "" for the one checked most often. */
  readonly titrant: string;
  /** The lot of the kept oil; "" for the one titrated most often. */
  readonly oil: string;
}

export const nothingChosen: Chosen = { titrant: "", oil: "" };

export interface Charts {
  readonly scatter: Found;
  readonly blanks: Found;
  readonly strength: Found;
  readonly oil: Found;
  readonly made: Found;
  readonly charge: Found;
  /** Of the finished fuel, batch by batch. */
  readonly fuels: readonly Found[];
  /** What may be chosen. */
  readonly titrants: readonly string[];
  readonly oils: readonly string[];
  readonly chosen: Chosen;
}

/** "K-5, KOH". */
const titrantName = ({ titrant, base }: TitrantHistory): string => `${titrant}, ${base}`;

const mostChecked = (histories: readonly TitrantHistory[]): TitrantHistory | undefined =>
  [...histories].sort((a, b) => b.checks.length - a.checks.length)[0];

/** @param today as a spreadsheet counts days */
export function chartsOf(
  { titrations, titrants, batches, fuels }: Extract<OverTimeRecord, { state: "read" }>,
  { titrant, oil }: Chosen,
  today: number,
): Charts {
  const history = titrants.find((each) => titrantName(each) === titrant) ?? mostChecked(titrants);
  const oils = checkOils(titrations);
  const lot = oils.includes(oil) ? oil : oils[0];
  return {
    scatter: scatterSeries(titrations),
    blanks: blankSeries(titrations),
    strength: strengthSeries(history, today),
    oil: checkOilSeries(titrations, lot),
    made: yieldSeries(batches),
    charge: chargeSeries(batches),
    fuels: fuelSeries(fuels),
    titrants: titrants.map(titrantName),
    oils,
    chosen: { titrant: history ? titrantName(history) : "", oil: lot ?? "" },
  };
}

/** Those with figures enough for a chart, in the order they are shown. */
export const drawable = (charts: Charts): Series[] => {
  const { scatter, blanks, strength, oil, made, charge, fuels } = charts;
  return [scatter, blanks, strength, oil, made, charge, ...fuels].filter(
    (each) => each.kind === "series",
  );
};
