import { describe, expect, it } from "vitest";
import { mappingFrom, withColumn, withConstant } from "../../../src/adopt/recognising/mapping";
import { lacks } from "../../../src/adopt/recognising/lacks";
import { withAnswer } from "../../../src/adopt/recognising/answers";
import { recogniseSheet, type TableGuess } from "../../../src/adopt/recognising/recognise";
import { rememberedMapping, rememberedRows } from "../../../src/adopt/recognising/remembered";
import { layoutCount, makeLogbook } from "./logbooks";

const guessOf = (index: number): TableGuess =>
  recogniseSheet(makeLogbook(index, "all", 1).cells)[0] as TableGuess;

describe("a mapping", () => {
  it("takes a correction, and a role that stands once leaves the column it had", () => {
    const mapping = mappingFrom(guessOf(0));
    const lot = mapping.columns.find(({ role }) => role === "lot")?.column ?? -1;
    const note = mapping.columns.find(({ role }) => role === "note")?.column ?? -1;
    const changed = withColumn(mapping, note, "lot");
    expect(changed.columns.find(({ column }) => column === note)?.role).toBe("lot");
    expect(changed.columns.find(({ column }) => column === lot)?.role).toBe("other");
  });

  it("is remembered as rows that people can read, and read again", () => {
    for (let index = 0; index < layoutCount; index += 1) {
      const guess = guessOf(index);
      const charged = withConstant(mappingFrom(guess), "baseCharge", "7", "g/L", "as weighed");
      const answered = withAnswer(
        withAnswer(charged, { ask: "unit", word: "drum", litres: "208" }),
        { ask: "blank", means: "day" },
      );
      const said = withAnswer(answered, { ask: "commas", means: "thousands" });
      const mapping = withConstant(said, "temperature", "20");
      expect(rememberedMapping(guess, rememberedRows(mapping))).toEqual(mapping);
    }
  });

  it("is not used any more when a heading has changed", () => {
    const guess = guessOf(0);
    const rows = rememberedRows(mappingFrom(guess)).map((row, at) =>
      at === 3 ? row.map((each, place) => (place === 3 ? "Changed" : each)) : row,
    );
    expect(rememberedMapping(guess, rows)).toBeUndefined();
  });

  it("says what the arithmetic still needs, and takes a base that a heading names", () => {
    const mapping = mappingFrom(guessOf(1));
    const renamed = (from: RegExp, to: string) => ({
      ...mapping,
      columns: mapping.columns.map((each) => ({
        ...each,
        heading: each.heading.replace(from, to),
      })),
      constants: mapping.constants.filter(({ role }) => role !== "assay"),
    });
    const wanted = (of: typeof mapping) =>
      lacks(of).flatMap(({ roles, isChoice }) => (isChoice ? [] : [roles[0]]));
    expect(wanted(renamed(/KOH|NaOH/g, "lye"))).toEqual(["base", "assay"]);
    const named = withColumn(renamed(/KOH|NaOH/g, "lye"), 0, "acidDose");
    const columns = named.columns.map((each) =>
      each.column === 0 ? { ...each, heading: "KOH for acid g" } : each,
    );
    expect(wanted({ ...named, columns })).toEqual(["assay"]);
  });
});
