/** The mean blank of each titration, in the order of time. */
import { mean } from "../../core/exact/lists";
import type { RecordedTitration } from "../planning/read-titrations";
import { controlSeries } from "./control-series";
import { comparable } from "./method";
import type { Found } from "./series";

export function blankSeries(all: readonly RecordedTitration[]): Found {
  const { rows, leftOut } = comparable(all);
  const values = rows.flatMap(({ day, lot, blanks, sharesBlanks }) =>
    blanks.length === 0 || sharesBlanks ? [] : [{ day, of: lot, value: mean(blanks).toNumber() }],
  );
  return controlSeries(values, rows[0]?.titreStep?.toNumber(), {
    title: "Blanks",
    unit: "mL",
    what: "Mean blank of a titration",
    one: "blank",
    many: "blanks",
    leftOut,
    places: 3,
  });
}
