/** Columns under headings of which nobody knows a word: told by arithmetic and neighbours alone, and never sure. */
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { sureFrom } from "../../../src/adopt/recognising/sure";
import { sheetOf } from "./sheet-of";

type Rows = readonly (readonly LogbookValue[])[];

const guessed = (headings: readonly string[], rows: Rows) =>
  recogniseSheet(sheetOf([headings, ...rows]))[0]?.columns ?? [];
const roles = (headings: readonly string[], rows: Rows): string[] =>
  guessed(headings, rows).map(({ role }) => role);

/** Two titres, a blank, their mean and what is left; 10 g and 0.1 mol/L: 0.282 % FFA a mL. */
const titrations: Rows = [
  ["A1", 5.2, 5.3, 0.21, 5.25, 5.04, 10, 0.1, 1.42],
  ["A2", 7.1, 7.14, 0.18, 7.12, 6.94, 10, 0.1, 1.96],
  ["A3", 2.9, 2.96, 0.23, 2.93, 2.7, 10, 0.1, 0.76],
  ["A4", 9.4, 9.32, 0.2, 9.36, 9.16, 10, 0.1, 2.58],
  ["A5", 4.06, 4.12, 0.19, 4.09, 3.9, 10, 0.1, 1.1],
  ["A6", 6.3, 6.26, 0.22, 6.28, 6.06, 10, 0.1, 1.71],
];

describe("a titration under headings that mean nothing", () => {
  const known = [
    "Lot",
    "Titre 1",
    "Titre 2",
    "Blank",
    "Zwork",
    "Vlimp",
    "Sample g",
    "M KOH",
    "Krauff",
  ];

  it("has its mean, what is left of it and its acid told by their arithmetic", () => {
    const found = guessed(known, titrations);
    expect(found.map(({ role }) => role)).toEqual([
      "lot",
      "titre",
      "titre",
      "blank",
      "meanTitre",
      "correctedTitre",
      "sampleMass",
      "molarity",
      "ffa",
    ]);
    for (const { heading, score } of found)
      if (["Zwork", "Vlimp", "Krauff"].includes(heading)) expect(score).toBeLessThan(sureFrom);
  });

  it("has its titres told where they are numbered and alike, its blank by what it takes from them", () => {
    const unknown = [
      "Lot",
      "Zwork 1",
      "Zwork 2",
      "Vlimp",
      "Plunk",
      "Net",
      "Sample g",
      "M KOH",
      "FFA %",
    ];
    expect(roles(unknown, titrations)).toEqual([
      "lot",
      "titre",
      "titre",
      "blank",
      "meanTitre",
      "correctedTitre",
      "sampleMass",
      "molarity",
      "ffa",
    ]);
  });

  it("is left open where the figures agree with nothing", () => {
    const shuffled = titrations.map((row, at) => [
      ...row.slice(0, 4),
      titrations[(at + 2) % 6]?.[4] ?? "",
      titrations[(at + 3) % 6]?.[5] ?? "",
      ...row.slice(6, 8),
      titrations[(at + 1) % 6]?.[8] ?? "",
    ]);
    const found = roles(known, shuffled);
    expect([found[4], found[5], found[8]]).toEqual(["other", "other", "other"]);
  });
});

describe("a batch under headings that mean nothing", () => {
  /** 90 % KOH; 2.02 g a litre for each % FFA and 8 g for the reaction, so much methanol as a fifth. */
  const batch = (ffa: number, litres: number, drift: number): LogbookValue[] => {
    const [acid, reaction] = [Math.round(2.02 * ffa * litres), Math.round((8 / 0.9) * litres)];
    const methanol = Math.round(litres * 2) / 10;
    return [ffa, litres, acid, reaction, acid + reaction, methanol, Math.round(litres * drift)];
  };
  const rows: Rows = [
    ["B1", ...batch(1.2, 120, 0.95)],
    ["B2", ...batch(2.9, 95, 0.9)],
    ["B3", ...batch(0.7, 210, 0.97)],
    ["B4", ...batch(4.1, 150, 0.91)],
    ["B5", ...batch(1.9, 60, 0.94)],
    ["B6", ...batch(3.3, 180, 0.93)],
  ];

  it("has three columns told that add up, and what goes by the oil", () => {
    const headings = ["Batch", "FFA %", "Oil L", "Brask", "Dwelf", "Kwimp", "Snorv", "Thrazz"];
    expect(roles(headings, rows)).toEqual([
      "batch",
      "ffa",
      "oilAmount",
      "acidDose",
      "reactionDose",
      "catalyst",
      "methanol",
      "litresMade",
    ]);
  });

  it("has its oil told by a dose that is a straight line of the acid for each litre", () => {
    const some = rows.map((row) => [row[0] ?? "", row[1] ?? "", row[2] ?? "", row[5] ?? ""]);
    expect(roles(["Batch", "FFA %", "Brask", "Lye g"], some)).toEqual([
      "batch",
      "ffa",
      "oilAmount",
      "catalyst",
    ]);
  });

  it("is left open where two columns are as good", () => {
    // oil in litres and in kilograms beside methanol: a fifth of either
    const some = rows.map((row) => [
      row[0] ?? "",
      row[2] ?? "",
      Number(row[2]) * 1.1,
      row[6] ?? "",
      90,
    ]);
    const found = roles(["Batch", "Brask", "Dwelf", "Snorv", "Lye purity %"], some);
    expect(found.slice(1, 4)).toEqual(["other", "other", "other"]);
  });
});
