/** Every formula that "Add columns" writes goes into a file and comes out of it as it was. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../../src/functions/catalogue";
import { isSameFormula } from "../../../src/sheet/formula/same-formula";
import { offers } from "../../../src/adopt/added-columns/columns-to-add";
import { sourcesOf } from "../../../src/adopt/added-columns/sources";
import { shouldHold } from "../../../src/adopt/added-columns/titre-formulas";
import { bases } from "../../../src/adopt/recognising/basis";
import type { LogbookMapping, MappedColumn } from "../../../src/adopt/recognising/mapping";
import { roleOf, roles, type RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import type { Edit } from "../../../src/xlsx";
import { formulaFromFile } from "../../../src/xlsx/formulas/from-file";
import { storedFormula } from "../../../src/xlsx/formulas/to-file";
import { times } from "../../thorough";
import { opened, patched, sheetIn } from "../../xlsx/answers";
import { bookOf } from "../../xlsx/files";

const bodyRows = 3;
/** What a column of any kind may hold: figures, words of all sorts, nothing. */
const held = ["", 2.4, 90, "KOH", "caustic soda", "l", "imp gal", "used fryer oil", "neutralised"];

const role = fc.constantFrom(...roles.map(({ id }) => id));
const column = fc
  .record({ role, unit: fc.nat(), heading: fc.constantFrom("KOH g", "ml", 'Lot #"1"', "Öl") })
  .map(({ role: id, unit, heading }) => {
    const { units } = roleOf(id);
    return { role: id as RoleId, heading, unit: units[unit % Math.max(1, units.length)] };
  });

/** Roles that every dose needs, so that most layouts have something to add. */
const usual: readonly RoleId[] = [
  "titre",
  "titre",
  "sampleMass",
  "molarity",
  "oilAmount",
  "amountUnit",
  "baseCharge",
  "base",
  "assay",
  "catalyst",
];
/** What was answered of grams of lye. */
const basis = fc.constantFrom(...bases);
const usualColumn = (id: RoleId) =>
  fc
    .record({ unit: fc.constantFrom(undefined, ...roleOf(id).units), basis })
    .map((given) => ({ role: id, heading: id, ...given }));

const constant = fc
  .record({
    role: fc.constantFrom<RoleId>("base", "assay", "baseCharge", "molarity", "strength", "density"),
    value: fc.constantFrom("KOH", "NaOH", "90", "0,765", "7", "0.1", "-1"),
    isTyped: fc.boolean(),
    basis,
  })
  .map(({ role: id, value, isTyped, basis: answered }) => ({
    basis: answered,
    role: id,
    unit: roleOf(id).units[0],
    from: isTyped
      ? ({ kind: "typed", value } as const)
      : ({ kind: "cell", row: 0, column: 1, label: "Base KOH" } as const),
  }));

interface Layout {
  readonly mapping: LogbookMapping;
  readonly cells: SheetCells;
}

const layout: fc.Arbitrary<Layout> = fc
  .record({
    sheet: fc.constantFrom("Log", "1st", "TRUE", "Oil book", "it's"),
    first: fc.nat({ max: 800 }),
    usual: fc.tuple(...usual.map(usualColumn)),
    columns: fc.array(column, { maxLength: 9 }),
    constants: fc.array(constant, { maxLength: 6 }),
    values: fc.array(fc.constantFrom(...held), { minLength: 60, maxLength: 60 }),
    commas: fc.constantFrom("decimal" as const, "thousands" as const, "unsaid" as const),
  })
  .map(({ sheet, first, usual: needed, columns, constants, values, commas }) => {
    const all = [...needed, ...columns].map((each, index): MappedColumn => ({
      ...each,
      column: first + index,
    }));
    const wide = first + all.length;
    const row = (content: (column: number) => LogbookValue) =>
      Array.from({ length: wide }, (_, at) => content(at));
    const rows = [
      row((at) => (at === 1 ? "KOH" : "")),
      row((at) => all[at - first]?.heading ?? ""),
      ...Array.from({ length: bodyRows }, (_, down) =>
        row((at) => (at < first ? "" : (values[(down * 17 + at - first) % values.length] ?? ""))),
      ),
    ];
    const mapping: LogbookMapping = {
      sheet,
      place: {
        headingRow: 1,
        unitsRow: undefined,
        groupRow: undefined,
        firstRow: 2,
        lastRow: 1 + bodyRows,
        firstColumn: first,
        lastColumn: wide - 1,
      },
      columns: all,
      constants,
      commas,
    };
    const blank = rows.map((line) => line.map(() => ""));
    const formats = rows.map((line) => line.map(() => "General"));
    return { mapping, cells: { sheet, row: 0, column: 0, values: rows, formulas: blank, formats } };
  });

/** All formulas of a layout, in both spellings, and those a re-check's report would hold. */
function formulasOf({ mapping, cells }: Layout): string[] {
  const added = (["functions", "plain"] as const).flatMap((spelling) =>
    offers(mapping, cells, spelling).flatMap(({ formula }) => (formula ? [formula(3)] : [])),
  );
  const sources = sourcesOf(mapping, cells);
  const reported = roles.flatMap(({ id }) => {
    const part = shouldHold(id, sources);
    return part ? [`=${part(3)}`] : [];
  });
  return [...added, ...reported];
}

const ids = new Set<string>(catalogue.map(({ id }) => id));

describe("formulas of added columns", () => {
  it("go into a file and out of it unchanged, for any layout of a logbook", () => {
    let seen = 0;
    let inBrackets = 0;
    fc.assert(
      fc.property(layout, (given) => {
        for (const formula of formulasOf(given)) {
          const { text } = storedFormula(formula, "Log!A1");
          const called = [...text.matchAll(/_xldudf_TITRE_(\w*)/g)].map(([, id = ""]) => id);
          if (formulaFromFile(text) !== formula || !called.every((id) => ids.has(id))) {
            throw new Error(`${formula} became ${text}`);
          }
          seen += 1;
          if (formula.includes("(TITRE.CATALYST(")) inBrackets += 1;
        }
      }),
      { numRuns: times(700) },
    );
    // nine or more of a layout
    expect(seen).toBeGreaterThan(times(250) * 9);
    expect(inBrackets).toBeGreaterThan(20);
  });

  it("go through the bytes of a workbook, table or not", () => {
    fc.assert(
      fc.property(fc.array(layout, { minLength: 1, maxLength: 20 }), (layouts) => {
        const formulas = layouts.flatMap(formulasOf);
        const edits = formulas.map((formula, row): Edit => ({
          do: "set-cell",
          sheet: "Data",
          row,
          column: 0,
          content: { kind: "formula", formula, result: 1 },
        }));
        const { cells } = sheetIn(opened(patched(bookOf(""), edits)));
        expect(cells.map(({ formula }) => formula)).toEqual(formulas);
        for (const [row, formula] of formulas.entries()) {
          expect(isSameFormula(formula, cells[row]?.formula ?? "", "")).toBe(true);
        }
      }),
      { numRuns: 15 },
    );
  });
});
