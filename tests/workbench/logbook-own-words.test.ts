/** New columns of a logbook with words of its own, worked out by the embedded engine in both spellings. */
import { describe, expect, it } from "vitest";
import type { Action } from "../../src/taskpane/logbook/state";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { offers, type Spelling } from "../../src/adopt/added-columns/columns-to-add";
import type { LogbookValue } from "../../src/adopt/recognising/sheet-cells";
import { Pane, sheetOf } from "../taskpane/logbook/typed-pane";

const wanted = ["correctedTitre", "acidValue", "catalyst"];

interface Case {
  readonly headings: readonly string[];
  readonly formats: readonly string[];
  readonly rows: readonly (readonly LogbookValue[])[];
  readonly actions: readonly Action[];
  /** Net titre and lye by row; "error" where no figure may come out. */
  readonly comesTo: readonly (readonly [net: number, lye: number] | "error")[];
}

function offered({ headings, formats, rows, actions }: Case, spelling: Spelling) {
  const pane = new Pane(sheetOf([headings, ...rows], formats)).act(...actions);
  return offers(pane.mapping, pane.cells, spelling).filter(({ id }) => wanted.includes(id));
}

async function opened(of: Case, spelling: Spelling): Promise<HeadlessWorkbook> {
  const added = offered(of, spelling);
  const rows = [of.headings, ...of.rows].map((row, at) => [
    ...row.map((value) => ({
      value: value as string | number,
      format: at > 0 ? of.formats[row.indexOf(value)] || "General" : "General",
    })),
    ...added.map(({ heading, formula }) =>
      at === 0 ? { value: heading } : { formula: formula?.(at + 1) ?? "" },
    ),
  ]);
  return openHeadless({
    name: "Log",
    sheets: [{ name: "Log", rows, columnWidths: [], tables: [], frozenRows: 1 }],
  });
}

/** 0.1 mol/L, 10 g of oil, 7 g/L of pure KOH, 90 %. */
const lyeOf = (net: number, litres: number): number =>
  (((litres * 0.915 * 56.1 * 0.1 * net) / 10 / 56.1) * 56.1053 + litres * 7) / 0.9;

const lab: readonly Action[] = [
  { do: "typed", figure: "strength", value: "0.1", unit: "mol/L" },
  { do: "constant", role: "base", value: "KOH" },
  { do: "typed", figure: "assay", value: "90" },
  { do: "typed", figure: "charge", value: "7", unit: "g/L", basis: "pure" },
];
const headings = ["Date", "Lot", "Titre ml", "Blank", "Sample g", "Oil in", "unit"];
const formats = ["yyyy-mm-dd"];
const day = 46_000;

const drums: Case = {
  headings,
  formats,
  rows: [
    [day, "A", 4.2, 0.2, 10, 120, "L"],
    [day, "B", 4.4, "″", "″", 2, "drum"],
    [day, "C", 4.6, "″", "″", 30, "imp gal"],
    [day, "D", 4.8, 0.3, 10, 1, "IBC"],
  ],
  actions: [...lab, { do: "answer", answer: { ask: "unit", word: "drum", litres: "208" } }],
  comesTo: [[4, lyeOf(4, 120)], [4.2, lyeOf(4.2, 416)], [4.4, lyeOf(4.4, 30 * 4.54609)], "error"],
};

const daily: Case = {
  headings,
  formats,
  rows: [
    [day, "A", 4.2, 0.2, 10, 120, "L"],
    [day, "B", 4.4, "", 10, 120, "L"],
    [day + 1, "C", 4.6, 0.4, 10, 120, "L"],
    [day + 1, "D", 4.8, "", 10, 120, "L"],
    [day + 2, "E", 4.8, "", 10, 120, "L"],
  ],
  actions: [...lab, { do: "answer", answer: { ask: "blank", means: "day" } }],
  comesTo: [
    [4, lyeOf(4, 120)],
    [4.2, lyeOf(4.2, 120)],
    [4.2, lyeOf(4.2, 120)],
    [4.4, lyeOf(4.4, 120)],
    "error",
  ],
};

/** (titre + 5) g of NaOH for each litre, one flake, whatever its assay. */
const hobby: Case = {
  headings: ["Date", "Lot", "Titre ml", "Oil litres", "NaOH g"],
  formats,
  rows: [
    [day, "A", 2.1, 150, 1065],
    [day + 1, "B", 3.4, 120, 1008],
  ],
  actions: [
    { do: "typed", figure: "strength", value: "1", unit: "g/L", basis: "as weighed" },
    { do: "constant", role: "titrantBase", value: "NaOH" },
    { do: "constant", role: "sampleVolume", value: "1" },
    { do: "constant", role: "base", value: "NaOH" },
    { do: "typed", figure: "charge", value: "5", unit: "g/L", basis: "as weighed" },
  ],
  comesTo: [
    [2.1, 1065],
    [3.4, 1008],
  ],
};

describe.each(["functions", "plain"] as const)("new columns as %s", (spelling) => {
  it.each([
    ["drums, ditto marks and a word that nobody knows", drums],
    ["one blank for the day", daily],
    ["the hobby way, whose lye has no known assay", hobby],
  ] as const)("come out right with %s", async (_, of) => {
    const workbook = await opened(of, spelling);
    const added = offered(of, spelling);
    const at = (row: number, id: string): unknown =>
      workbook.value({
        sheet: "Log",
        row: row + 1,
        column: of.headings.length + added.findIndex((each) => each.id === id),
      });
    for (const [row, right] of of.comesTo.entries()) {
      const lye = at(row, "catalyst");
      if (right === "error") expect(typeof lye).not.toBe("number");
      else {
        expect(Number(at(row, "correctedTitre"))).toBeCloseTo(right[0], 10);
        expect(Number(lye) / right[1]).toBeCloseTo(1, 10);
      }
    }
    workbook.close();
  });

  it("are not offered while an answer they rest on is open", () => {
    const open = { ...daily, actions: lab };
    const lacks = offered(open, "plain").map((each) => each.lacks);
    expect(lacks).toEqual(wanted.map(() => "what an empty blank means: say it in Check columns"));
    const unsaid = lab.map((each) =>
      each.do === "typed" && each.figure === "charge"
        ? ({ do: "typed", figure: "charge", value: "7", unit: "g/L" } as const)
        : each,
    );
    const catalyst = offered({ ...drums, actions: unsaid }, spelling).find(
      ({ id }) => id === "catalyst",
    );
    expect(catalyst?.formula).toBeUndefined();
    expect(catalyst?.lacks).toContain("pure lye or as weighed");
  });
});
