/** Rules that reach to the last row of a table go on in the rows that it grows by, and no other rule does. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openXlsx, isFileProblem, patchXlsx } from "../../src/xlsx";
import { bookOf, main, partsOf } from "./files";

const letters = "ABCDEFGH";
const lastRow = 6;
/** Columns B to F, rows 2 to 6 with the headings. */
const table = { row: 1, column: 1, rows: 5, columns: 5 };
const excel = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const named = "http://schemas.microsoft.com/office/excel/2006/main";

interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
const area: fc.Arbitrary<Area> = fc
  .tuple(
    fc.integer({ min: 0, max: 7 }),
    fc.integer({ min: 0, max: 3 }),
    fc.integer({ min: 1, max: 6 }),
    fc.oneof(fc.constant(lastRow), fc.integer({ min: 1, max: 12 })),
  )
  .map(([left, more, top, bottom]) => ({
    left,
    right: Math.min(7, left + more),
    top: Math.min(top, bottom),
    bottom: Math.max(top, bottom),
  }));

const written = ({ left, right, top, bottom }: Area): string =>
  `${letters.charAt(left)}${String(top)}:${letters.charAt(right)}${String(bottom)}`;

const cellsOf = ({ left, right, top, bottom }: Area): string[] => {
  const cells: string[] = [];
  for (let row = top; row <= bottom; row += 1)
    for (let at = left; at <= right; at += 1) cells.push(letters.charAt(at) + String(row));
  return cells;
};

/** Areas as a file says them, read here and not by the product. */
const readCells = (sqref: string): string[] =>
  sqref.split(" ").flatMap((each) => {
    const [, a = "", b = "", c = a, d = b] = /^([A-H])(\d+)(?::([A-H])(\d+))?$/.exec(each) ?? [];
    return cellsOf({
      left: letters.indexOf(a),
      right: letters.indexOf(c),
      top: Number(b),
      bottom: Number(d),
    });
  });

type Kind = "typed" | "format" | "newer";
interface Rule {
  readonly kind: Kind;
  readonly areas: readonly Area[];
}
const rule = (kind: Kind): fc.Arbitrary<Rule> =>
  fc.array(area, { minLength: 1, maxLength: 2 }).map((areas) => ({ kind, areas }));

const sqref = ({ areas }: Rule): string => areas.map(written).join(" ");
const withRules = (rules: readonly Rule[]): Uint8Array => {
  const of = (kind: Kind) => rules.filter((each) => each.kind === kind);
  const formats = of("format").map(
    (each) =>
      `<conditionalFormatting sqref="${sqref(each)}"><cfRule type="expression" priority="1"><formula>B3&gt;1</formula></cfRule></conditionalFormatting>`,
  );
  const typed = of("typed").map(
    (each) =>
      `<dataValidation type="list" sqref="${sqref(each)}"><formula1>"a,b"</formula1></dataValidation>`,
  );
  const newer = of("newer").map(
    (each) =>
      `<x14:dataValidation type="list"><x14:formula1><xm:f>Data!$A$1</xm:f></x14:formula1><xm:sqref>${sqref(each)}</xm:sqref></x14:dataValidation>`,
  );
  const list =
    typed.length > 0
      ? `<dataValidations count="${String(typed.length)}">${typed.join("")}</dataValidations>`
      : "";
  const extension =
    newer.length > 0
      ? `<extLst><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}" xmlns:x14="${excel}"><x14:dataValidations count="${String(newer.length)}" xmlns:xm="${named}">${newer.join("")}</x14:dataValidations></ext></extLst>`
      : "";
  const headings = [...letters.slice(1, 6)]
    .map((letter) => `<c r="${letter}2" t="inlineStr"><is><t>${letter}</t></is></c>`)
    .join("");
  const book = bookOf(`<row r="2">${headings}</row>`, formats.join("") + list + extension);
  const made = patchXlsx(book, [{ do: "add-table", sheet: "Data", name: "Log", area: table }]);
  if (isFileProblem(made)) throw new Error(JSON.stringify(made));
  return made;
};

const rulesIn = (bytes: Uint8Array): { kind: Kind; sqref: string }[] => {
  const xml = partsOf(bytes)["xl/worksheets/sheet1.xml"] ?? "";
  expect(xml).toContain(main);
  const all = (kind: Kind, pattern: RegExp) =>
    [...xml.matchAll(pattern)].map(([, found = ""]) => ({ kind, sqref: found }));
  return [
    ...all("format", /<conditionalFormatting sqref="([^"]*)"/g),
    ...all("typed", /<dataValidation type="list" sqref="([^"]*)"/g),
    ...all("newer", /<xm:sqref>([^<]*)</g),
  ];
};

describe("the rules of a table that grows", () => {
  const rules = fc
    .tuple(
      fc.array(rule("format"), { maxLength: 2 }),
      fc.array(rule("typed"), { maxLength: 2 }),
      fc.array(rule("newer"), { maxLength: 1 }),
    )
    .map((each) => each.flat());

  it("reach down to its last row where they did, in its columns, and stay as they are elsewhere", () => {
    fc.assert(
      fc.property(rules, fc.integer({ min: 1, max: 5 }), (given, more) => {
        const file = withRules(given);
        const before = rulesIn(file);
        const grown = patchXlsx(file, [
          { do: "grow-table", table: "Log", area: { ...table, rows: table.rows + more } },
        ]);
        if (isFileProblem(grown)) throw new Error(JSON.stringify(grown));
        expect(isFileProblem(openXlsx(grown))).toBe(false);
        const taken = before
          .filter(({ kind }) => kind !== "format")
          .flatMap((each) => readCells(each.sqref));
        for (const [at, now] of rulesIn(grown).entries()) {
          const { kind, areas } = [...given].sort(byKind)[at] ?? { kind: "format", areas: [] };
          const wanted = areas.flatMap((each) => {
            const isOfTable =
              each.bottom === lastRow && each.top > 2 && each.left >= 1 && each.right <= 5;
            const added = cellsOf({ ...each, top: lastRow + 1, bottom: lastRow + more });
            const isFree = kind === "format" || !added.some((cell) => taken.includes(cell));
            return [...cellsOf(each), ...(isOfTable && isFree ? added : [])];
          });
          expect(now.kind).toBe(kind);
          expect(readCells(now.sqref).sort()).toEqual([...wanted].sort());
        }
      }),
    );
  });
});

const order: readonly Kind[] = ["format", "typed", "newer"];
const byKind = (a: Rule, b: Rule): number => order.indexOf(a.kind) - order.indexOf(b.kind);
