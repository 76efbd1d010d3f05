/** What a word leaves open is told by what stands beside it and by the figures under it. */
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { sheetOf } from "./sheet-of";

/** Each column under its heading, down. */
function rolesOf(columns: Readonly<Record<string, readonly LogbookValue[]>>): string[] {
  const rows = (Object.values(columns)[0] ?? []).map((_, at) =>
    Object.values(columns).map((cells) => cells[at] ?? ""),
  );
  const [table] = recogniseSheet(sheetOf([Object.keys(columns), ...rows]));
  return (table?.columns ?? []).map(({ role }) => role);
}

const date = ["3 May 2026", "9 May 2026", "14 May 2026", "20 May 2026", "27 May 2026"];
const marks = ["NQ41", "SW7", "NQ44", "TW12", "F3"];
const countedOn = ["B101", "B102", "B103", "B104", "B105"];
const koh = ["KOH", "KOH", "KOH", "KOH", "KOH"];
const titres = [5.2, 7.1, 2.9, 9.4, 4.06];
const ten = [10, 10, 10, 10, 10];
const litres = [120, 200, 80, 150, 90];
const lye = [1180, 2210, 690, 1830, 850];

describe("what stands beside a column", () => {
  it("tells the base of the burette from that of the batch", () => {
    expect(
      rolesOf({
        Date: date,
        Lot: marks,
        "Base used": koh,
        "Sample (g)": ten,
        "Titre (mL)": titres,
      }),
    ).toEqual(["date", "lot", "titrantBase", "sampleMass", "titre"]);
    expect(
      rolesOf({
        Date: date,
        Lot: marks,
        "Oil (L)": litres,
        "Base used": koh,
        "Lye needed (g)": lye,
      }),
    ).toEqual(["date", "lot", "oilAmount", "base", "catalyst"]);
  });

  it("makes what was weighed before the titres the sample, and never oil that was weighed the lye", () => {
    expect(rolesOf({ Date: date, Lot: marks, "Weighed (g)": ten, "Titre (mL)": titres })).toEqual([
      "date",
      "lot",
      "sampleMass",
      "titre",
    ]);
    expect(rolesOf({ Date: date, "Weight of oil": ten, "Titre 1": titres, "Titre 2": titres })[1]) //
      .toBe("sampleMass");
  });

  it("makes one word for lots and batches the batch, beside where each lot came from", () => {
    const batch = { "Oil (L)": litres, "Lye needed (g)": lye };
    expect(rolesOf({ Partie: countedOn, Datum: date, Herkunft: marks, ...batch })).toEqual([
      "batch",
      "date",
      "lot",
      "oilAmount",
      "catalyst",
    ]);
  });
});

describe("what the figures and the words say", () => {
  it("is that a first go without a second is a rough one", () => {
    const found = rolesOf({ Date: date, Lot: marks, "Oil (L)": litres, "First go (mL)": titres });
    expect(found[3]).toBe("other");
    expect(
      rolesOf({ "Sample (g)": ten, "First titre (mL)": titres, "Second titre (mL)": titres }),
    ).toEqual(["sampleMass", "titre", "titre"]);
  });

  it("is that what is the same in each row was not read from a burette", () => {
    const blank = [0.21, 0.18, 0.23, 0.2, 0.19];
    const five = [5, 5, 5, 5, 5];
    expect(
      rolesOf({
        Datum: date,
        "Probe, mL": five,
        "Verbrauch, mL": titres,
        "Blindwert, mL": blank,
        "Methanol, L": litres.map((each) => each / 5),
      }),
    ).toEqual(["date", "sampleVolume", "titre", "blank", "methanol"]);
  });

  it("is that two headings a slip apart are one, and 1 mL below a word is a number", () => {
    expect(rolesOf({ "Sample (g)": ten, "Burette 1": titres, "Bureette 2": titres })).toEqual([
      "sampleMass",
      "titre",
      "titre",
    ]);
    const rows = titres.map((each, at) => [date[at] ?? "", marks[at] ?? "", 10, each, each]);
    const [table] = recogniseSheet(
      sheetOf([
        ["", "", "Sample", "Titre", "Titre"],
        ["Date", "Drum", "size (g)", "1 mL", "2 mL"],
        ...rows,
      ]),
    );
    expect(table?.columns.map(({ role }) => role)).toEqual([
      "date",
      "lot",
      "sampleMass",
      "titre",
      "titre",
    ]);
  });

  it("is that in Portuguese what is put in is no rate, and 100 parts are per cent in Quebec", () => {
    expect(
      rolesOf({ "Óleo (L)": litres, "Catalisador a pôr quilos": lye.map((each) => each / 1000) }),
    ).toEqual(["oilAmount", "catalyst"]);
    expect(
      rolesOf({ Date: date, "AGL (p. cent)": titres.map((each) => each / 3), "Huile (L)": litres }),
    ).toEqual(["date", "ffa", "oilAmount"]);
  });
});
