import { describe, expect, it } from "vitest";
import { type Edit, patchXlsx } from "../../src/xlsx";
import {
  cellIn,
  clear,
  codeOf,
  formulaIn,
  opened,
  patched,
  set,
  setFormula,
  sheetIn,
  valueIn,
} from "./answers";
import { bookOf, made, partsOf } from "./files";

const log = "Bob's log, 2026";
const five = [1, 2, 3, 4, 5];
const column = (heading: string, more: object = {}): Edit => ({
  do: "add-column",
  table: "log",
  heading,
  cells: five,
  ...more,
});

describe("a column added to a table", () => {
  const edits = [
    column("Read at", { cells: five.map((day) => ({ date: `2026-05-0${day}` })) }),
    column("Twice", {
      formula: "=[@[Titre mL]]*2",
      cells: [4.7, 6.2, 3.7, 8.4, 5.8],
      format: "0.00",
      look: "calculated",
    }),
  ];
  const after = opened(patched(made("tidy"), edits));
  const table = sheetIn(after, log).tables[0];

  it("widens the table and gives it the heading and the formula", () => {
    expect(table?.area).toEqual({ row: 0, column: 0, rows: 6, columns: 6 });
    expect(table?.columns.slice(4)).toEqual([
      { heading: "Read at" },
      { heading: "Twice", formula: "=Log[[#This Row],[Titre mL]]*2" },
    ]);
  });

  it("fills every row, with formulas in the long form that files hold", () => {
    expect(valueIn(after, "F1", log)).toBe("Twice");
    expect(valueIn(after, "F6", log)).toBe(5.8);
    expect(formulaIn(after, "F6", log)).toBe("=Log[[#This Row],[Titre mL]]*2");
    // 1 May 2026: 46143 days, as LibreOffice shows it too.
    expect(valueIn(after, "E2", log)).toBe(46143);
  });

  it("looks like the column beside it, but for its number format", () => {
    const look = (address: string) => after.looks[cellIn(after, address, log)?.look ?? 0];
    expect(look("E1")).toEqual(look("D1"));
    expect(look("F1")).toEqual(look("D1"));
    expect(look("E2")?.format).toBe("yyyy-mm-dd");
    expect(look("F2")).toMatchObject({ format: "0.00", colour: "#0b5b65" });
  });

  it("changes the sheet, the table and the styles, and no other part", () => {
    const before = partsOf(made("tidy"));
    const now = partsOf(patched(made("tidy"), edits));
    expect(Object.keys(now).filter((name) => now[name] !== before[name])).toEqual(
      ["xl/worksheets/sheet1.xml", "xl/styles.xml", "xl/tables/table1.xml"].sort(
        (a, b) => Object.keys(now).indexOf(a) - Object.keys(now).indexOf(b),
      ),
    );
    expect(now["xl/tables/table1.xml"]).toContain('<autoFilter ref="A1:F6"');
    expect(now["xl/tables/table1.xml"]).toContain('<tableColumns count="6">');
  });

  it("serves a table with a row of totals, whose own row it leaves empty", () => {
    const drums: Edit = { do: "add-column", table: "Drums", heading: "Full", cells: [1, 0, 1, 1] };
    const book = patched(made("charts"), [drums]);
    const xml = partsOf(book)["xl/tables/table1.xml"];
    expect(xml).toContain('ref="B2:E7" totalsRowCount="1"');
    expect(xml).toContain('<autoFilter ref="B2:E6"/>');
    expect(cellIn(opened(book), "E7", "Totals")).toBeUndefined();
  });

  it.each([
    ["a heading that is there", [column("lot")], "bad-heading"],
    ["an empty heading", [column(" ")], "bad-heading"],
    ["too few cells", [column("New", { cells: [1] })], "bad-length"],
    ["a table that is not there", [{ ...column("New"), table: "Nobody" }], "no-table"],
    ["cells in the way", [set("E4", "x", log), column("New")], "not-empty"],
    ["a broken formula", [column("New", { formula: "=(" })], "broken-formula"],
  ])("is refused for %s", (_, refused, code) => {
    expect(codeOf(patchXlsx(made("tidy"), refused as Edit[]))).toBe(code);
  });

  it("goes where cells in the way are emptied in the same breath", () => {
    const book = patched(made("tidy"), [set("E4", "x", log)]);
    expect(codeOf(patchXlsx(book, [column("New")]))).toBe("not-empty");
    const both = opened(patched(book, [clear("E4", log), column("New")]));
    expect(valueIn(both, "E4", log)).toBe(3);
  });
});

describe("rows added to a table", () => {
  const row = (lot: string, titre: number) => [
    { kind: "value", value: lot } as const,
    { kind: "value", value: titre } as const,
    { kind: "nothing" } as const,
    { kind: "formula", formula: "=56.1*[@[Titre mL]]", result: 56.1 * titre } as const,
  ];
  const rows: Edit = { do: "add-rows", table: "Log", rows: [row("Weir", 2), row("Mill", 3)] };
  const after = opened(patched(made("tidy"), [rows]));

  it("lengthen it, and look like its last row", () => {
    expect(sheetIn(after, log).tables[0]?.area.rows).toBe(8);
    expect(valueIn(after, "B8", log)).toBe(3);
    expect(formulaIn(after, "D8", log)).toBe("=56.1*Log[[#This Row],[Titre mL]]");
    expect(cellIn(after, "D8", log)?.look).toBe(cellIn(after, "D6", log)?.look);
  });

  it.each([
    ["over merged cells", { ...rows, rows: [row("a", 1), row("b", 1), row("c", 1)] }, "table-area"],
    ["of another width", { ...rows, rows: [row("a", 1).slice(1)] }, "bad-length"],
  ])("are refused %s", (_, refused, code) => {
    expect(codeOf(patchXlsx(made("tidy"), [refused as Edit]))).toBe(code);
  });

  it("are refused where a row of totals would have to move", () => {
    const totals: Edit = { do: "add-rows", table: "Drums", rows: [[{ kind: "nothing" }]] };
    expect(codeOf(patchXlsx(made("charts"), [totals]))).toBe("table-area");
  });

  it("and columns may be added together, in that order", () => {
    const together = opened(
      patched(made("tidy"), [rows, column("Stage", { cells: [...five, 6, 7] })]),
    );
    expect(sheetIn(together, log).tables[0]?.area).toMatchObject({ rows: 8, columns: 5 });
    expect(valueIn(together, "E8", log)).toBe(7);
  });
});

describe("a table that grows over what was typed beside and below it", () => {
  const area = { row: 0, column: 0, rows: 7, columns: 5 };
  const grow: Edit = { do: "grow-table", table: "Log", area };

  it("takes its new headings from the cells", () => {
    const edits: Edit[] = [
      { ...grow, formulas: { Twice: "=[@[Titre mL]]*2" } },
      set("E1", "Twice", log),
      set("A7", "Weir", log),
    ];
    const [table] = sheetIn(opened(patched(made("tidy"), edits)), log).tables;
    expect(table?.area).toEqual(area);
    expect(table?.columns[4]).toEqual({
      heading: "Twice",
      formula: "=Log[[#This Row],[Titre mL]]*2",
    });
  });

  it.each([
    ["without a heading", [grow], "bad-heading"],
    ["from elsewhere", [{ ...grow, area: { ...area, row: 1 } }], "table-area"],
    ["to less", [{ ...grow, area: { ...area, rows: 3 } }], "table-area"],
    ["over merged cells", [{ ...grow, area: { ...area, rows: 9 } }], "table-area"],
  ])("is refused %s", (_, refused, code) => {
    expect(codeOf(patchXlsx(made("tidy"), refused as Edit[]))).toBe(code);
  });
});

describe("a heading that is there", () => {
  it("is not changed, since formulas go by it", () => {
    expect(codeOf(patchXlsx(made("tidy"), [set("B1", "Titre", log)]))).toBe("heading-cell");
    expect(codeOf(patchXlsx(made("tidy"), [clear("B1", log)]))).toBe("heading-cell");
  });

  it("may be dressed otherwise, or written again as it is", () => {
    const edit = { ...set("B1", "Titre mL", log), look: "heading" } as const;
    expect(valueIn(opened(patched(made("tidy"), [edit])), "B1", log)).toBe("Titre mL");
  });
});

describe("a table that is added", () => {
  const area = { row: 1, column: 1, rows: 3, columns: 2 };
  const table: Edit = { do: "add-table", sheet: "Data", name: "Drums", area };
  const headings = [set("B2", "Lot"), set("C2", "Litres")];

  it("has its headings from cells set in the same breath, and its formulas", () => {
    const edits: Edit[] = [
      { ...table, formulas: { Litres: "=LEN([@Lot])" } },
      ...headings,
      setFormula("C3", "=LEN([@Lot])", 0),
    ];
    const after = opened(patched(bookOf(""), edits));
    expect(sheetIn(after).tables).toMatchObject([
      {
        name: "Drums",
        area,
        columns: [
          { heading: "Lot" },
          { heading: "Litres", formula: "=LEN(Drums[[#This Row],[Lot]])" },
        ],
      },
    ]);
    expect(formulaIn(after, "C3")).toBe("=LEN(Drums[[#This Row],[Lot]])");
  });

  it("grows in the same breath too", () => {
    const edits: Edit[] = [
      table,
      ...headings,
      { do: "add-column", table: "Drums", heading: "Kg", formula: "=[@Litres]*0.9", cells: [1, 2] },
    ];
    const [grown] = sheetIn(opened(patched(bookOf(""), edits))).tables;
    expect(grown?.columns.map(({ heading }) => heading)).toEqual(["Lot", "Litres", "Kg"]);
    expect(grown?.columns[2]?.formula).toBe("=Drums[[#This Row],[Litres]]*0.9");
  });

  it("takes an id and a part that no other table has", () => {
    const edits: Edit[] = [
      { ...table, sheet: "Notes", area: { row: 9, column: 0, rows: 2, columns: 1 } },
      set("A10", "Only", "Notes"),
    ];
    const book = patched(made("tidy"), edits);
    expect(partsOf(book)["xl/tables/table2.xml"]).toContain('id="2" name="Drums"');
    expect(opened(book).sheets.flatMap(({ tables }) => tables.map(({ name }) => name))).toEqual([
      "Log",
      "Drums",
    ]);
  });

  it.each([
    ["without headings", [table], "bad-heading"],
    ["with a figure for a heading", [set("B2", 1), set("C2", "x"), table], "bad-heading"],
    ["with one heading twice", [set("B2", "x"), set("C2", "X"), table], "bad-heading"],
    ["by the name of a cell", [...headings, { ...table, name: "AB12" }], "bad-name"],
    ["by a name with a space", [...headings, { ...table, name: "a b" }], "bad-name"],
    ["twice", [...headings, table, { ...table, area: { ...area, row: 20 } }], "name-taken"],
    ["over another", [...headings, table, { ...table, name: "Other" }], "table-area"],
  ])("is refused %s", (_, refused, code) => {
    expect(codeOf(patchXlsx(bookOf(""), refused as Edit[]))).toBe(code);
  });
});
