/** A kept oil that is titrated again and again: what changes is not the oil, but titrant, burette or hand. */
import { fewestValues } from "../../core/record/control-chart";
import type { RecordedTitration } from "../planning/read-titrations";
import { controlSeries } from "./control-series";
import { comparable } from "./method";
import type { Found } from "./series";

const valuesOf = (rows: readonly RecordedTitration[], lot: string) =>
  rows.flatMap(({ day, lot: of, acidValue }) =>
    of === lot && day !== undefined && acidValue !== undefined
      ? [{ day, of, value: acidValue }]
      : [],
  );

/** Lots titrated often enough for a chart, the one titrated most often first. */
export function checkOils(all: readonly RecordedTitration[]): string[] {
  const { rows } = comparable(all);
  const lots = [...new Set(rows.map(({ lot }) => lot))].filter((lot) => lot !== "");
  return lots
    .map((lot) => ({ lot, count: valuesOf(rows, lot).length }))
    .filter(({ count }) => count >= fewestValues)
    .sort((a, b) => b.count - a.count)
    .map(({ lot }) => lot);
}

/** @param lot undefined: none was titrated often enough */
export function checkOilSeries(all: readonly RecordedTitration[], lot: string | undefined): Found {
  const { rows, leftOut } = comparable(all);
  const shown = {
    title: "A kept check oil",
    unit: "mg KOH/g",
    what: "Acid value",
    leftOut,
  };
  if (lot === undefined) {
    const sentence = `No lot was titrated ${String(fewestValues)} times. Keep a litre of one oil, cold and dark, and titrate it now and then under one lot: what changes then is titrant, burette or hand.`;
    return { kind: "too few", ...shown, sentence };
  }
  return controlSeries(valuesOf(rows, lot), undefined, {
    ...shown,
    title: `Check oil ${lot}`,
    one: "acid value",
    many: "acid values",
    places: 2,
  });
}
