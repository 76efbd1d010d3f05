import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MemoryHost } from "../../host/memory";
import type { Calculation } from "../../host/memory/answers";
import { emptySheet, type MemoryBook } from "../../host/memory/book";
import { fault, isFault } from "../../../src/sheet/port";
import { callsChecks, writeAgain } from "../../../src/workbook/healing/checks-again";
import { heal, type Healing, mostAtOnce, mostTries } from "../../../src/workbook/healing/heal";
import { type Search, searchUnanswered } from "../../../src/workbook/healing/search";
import { respelled } from "../../../src/workbook/healing/unanswered";
import {
  causes,
  foundSentence,
  healedSentence,
  healingFault,
} from "../../../src/workbook/healing/wording";

/** A program in which a formula of ours shows #NAME? until it was written so many times. */
class Waiting {
  private readonly written = new Map<string, number>();
  writes = 0;

  constructor(
    private readonly needed: number,
    formulas: Readonly<Record<string, string>>,
    change: (book: MemoryBook) => void = () => undefined,
  ) {
    const sheet = emptySheet("Log");
    for (const [place, formula] of Object.entries(formulas)) {
      sheet.cells[place] = { value: "", formula, format: "0.00" };
    }
    const book: MemoryBook = {
      sheets: [sheet],
      tables: [],
      definedNames: {},
      isReadOnly: false,
      isProtected: false,
    };
    change(book);
    const calculation: Calculation = {
      result: (formula, { row, column }) => {
        if (/NOSUCH/.test(formula)) return { error: "#NAME?" };
        if (!/titre/i.test(formula)) return 7;
        return (this.written.get(`${row},${column}`) ?? 0) < this.needed
          ? { error: "#NAME?" }
          : 1.2903;
      },
    };
    this.host = new MemoryHost(calculation, book);
    const write = this.host.write.bind(this.host);
    this.host.write = (label, steps) => {
      this.writes += 1;
      for (const step of steps) {
        if (step.do !== "set-cells") continue;
        step.contents.forEach((_, down) => {
          const place = `${step.block.row + down},${step.block.column}`;
          this.written.set(place, (this.written.get(place) ?? 0) + 1);
        });
      }
      return write(label, steps);
    };
  }

  readonly host: MemoryHost;

  formulaAt(place: string): string {
    return this.host.book.sheets[0]?.cells[place]?.formula ?? "";
  }

  async heal(): Promise<Healing> {
    const healing = await heal(this.host, () => Promise.resolve());
    if (isFault(healing)) throw new Error(healing.code);
    return healing;
  }

  async search(): Promise<Search> {
    const search = await searchUnanswered(this.host);
    if (isFault(search)) throw new Error(search.code);
    return search;
  }
}

const dose = "=TITRE.DOSE(A1:C1)";

describe("a formula that waits for our functions", () => {
  it.each([
    ["=TITRE.DOSE(A1)", "=TITRE.DOSE(A1)"],
    ["=_xldudf_TITRE_DOSE(A1)", "=TITRE.DOSE(A1)"],
    ["=_xldudf_titre_dose(A1)", "=TITRE.DOSE(A1)"],
    ["=2*[2]!_xldudf_TITRE_DOSE( A1 )", "=2*TITRE.DOSE( A1 )"],
    ["='C:/Users/a b/Add-Ins/X.xla'!_xldudf_TITRE_DOSE(A1)", "=TITRE.DOSE(A1)"],
    ["=1+'https://d.example/[X.xlam]Y'!_xldudf_TITRE_DOSE(A1)", "=1+TITRE.DOSE(A1)"],
    ["=@TITRE.DOSE(A1)", "=@TITRE.DOSE(A1)"],
    ["=((_xldudf_TITRE_DOSE(A1)))/1000", "=((TITRE.DOSE(A1)))/1000"],
    [
      '=IF(A1="TITRE.DOSE(",titre.route(titre.acidvalue(2.3,0.1,10)),"")',
      '=IF(A1="TITRE.DOSE(",TITRE.ROUTE(TITRE.ACIDVALUE(2.3,0.1,10)),"")',
    ],
  ])("%s is written %s", (held, written) => {
    expect(respelled(held)).toBe(written);
  });

  it.each([
    "=SUM(A1)",
    '="TITRE.DOSE(A1)"',
    "=TITRE.NOSUCH(A1)",
    "=MYTITRE.DOSE(A1)",
    "=TITRE.DOSE(",
    "",
  ])("%s is none", (held) => {
    expect(respelled(held)).toBeUndefined();
  });

  it("is never changed in anything but the names of our functions", () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 0, max: 9 }), (text, digit) => {
        const quoted = text.replaceAll('"', '""');
        const formula = `=TITRE.ACIDVALUE(${digit},B1,10)&"${quoted}"`;
        expect(respelled(formula) ?? formula).toBe(formula);
      }),
    );
  });
});

describe("asking again", () => {
  it("finds nothing and writes nothing where every cell answers", async () => {
    const program = new Waiting(0, { "0,0": dose, "1,0": "=SUM(A1)" });
    expect(await program.heal()).toMatchObject({ asked: 0, tries: 0 });
    expect(program.writes).toBe(0);
    expect(foundSentence(await program.search())).toBeUndefined();
  });

  it("writes each waiting formula again, in one undo step, and leaves every other cell alone", async () => {
    const program = new Waiting(1, {
      "0,0": dose,
      "1,0": dose,
      "5,3": "=_xldudf_TITRE_DOSE(A1:C1)",
      "2,0": "=NOSUCH(A1)",
      "3,0": "=SUM(A1)",
    });
    const healing = await program.heal();
    expect(healing).toMatchObject({ asked: 3, tries: 1 });
    expect(healing.left.mendable).toEqual([]);
    expect(program.writes).toBe(1);
    expect(program.host.undoLabels).toEqual(["Ask Titrebook again"]);
    expect(program.formulaAt("5,3")).toBe(dose);
    expect(program.formulaAt("2,0")).toBe("=NOSUCH(A1)");
    expect(healedSentence(healing)).toBe("All 3 cells answer now.");
  });

  it("asks no more cells at a press than the program can take, and says how many there are", async () => {
    const many = Object.fromEntries(
      Array.from({ length: mostAtOnce + 7 }, (_, row) => [`${row},0`, dose]),
    );
    const program = new Waiting(1, many);
    const healing = await program.heal();
    expect(healing).toMatchObject({ asked: mostAtOnce, later: 7, tries: 1 });
    expect(healing.left.mendable).toHaveLength(7);
    expect(healedSentence(healing)).toBe(
      "5000 cells answer now. 7 cells more to ask: press Ask again.",
    );
    expect(await program.heal()).toMatchObject({ asked: 7, later: 0 });
    expect((await program.search()).mendable).toEqual([]);
  });

  it("keeps the format of a cell", async () => {
    const program = new Waiting(1, { "0,0": dose });
    await program.heal();
    expect(program.host.book.sheets[0]?.cells["0,0"]?.format).toBe("0.00");
  });

  it.each([1, 2, 3])("tries %i times when that is what it takes", async (needed) => {
    expect(await new Waiting(needed, { "0,0": dose }).heal()).toMatchObject({ tries: needed });
  });

  it("gives up after three tries and names a cell that still waits", async () => {
    const program = new Waiting(9, { "0,0": dose, "1,1": "=TITRE.DOSE(A1)+NOSUCH(1)" });
    const healing = await program.heal();
    expect(healing.tries).toBe(mostTries);
    expect(program.writes).toBe(mostTries);
    expect(healedSentence(healing)).toMatch(/^0 of 2 answer now\. After 3 tries Log!A1 still/);
  });

  it("leaves a protected sheet alone, and says so", async () => {
    const program = new Waiting(1, { "0,0": dose }, (book) => {
      const [sheet] = book.sheets;
      if (sheet) sheet.isProtected = true;
    });
    const healing = await program.heal();
    expect(program.writes).toBe(0);
    expect(causes(healing.left)).toEqual([
      "1 cell on a protected sheet, first Log!A1: take the protection off, then ask again.",
    ]);
  });

  const inTable = (formulas: Readonly<Record<string, string>>) =>
    new Waiting(1, formulas, (book) => {
      const block = { sheet: "Log", row: 0, column: 0, rows: 4, columns: 2 };
      const [sheet] = book.sheets;
      if (sheet) sheet.cells["0,0"] = { value: "Dose", formula: "", format: "General" };
      book.tables.push({ name: "Book", block, isFiltered: false, hasTotals: false });
    });

  it("writes a table's column of one formula, filled down or by name", async () => {
    const filled = inTable({
      "1,0": "=TITRE.DOSE(B2)",
      "2,0": "=TITRE.DOSE(B3)",
      "3,0": "=TITRE.DOSE(B4)",
    });
    expect((await filled.heal()).left.mixed).toEqual([]);
    expect(filled.writes).toBe(1);
    const named = inTable({
      "1,0": "=TITRE.DOSE([@Titre])",
      "2,0": "=TITRE.DOSE(Book[@Titre])",
      "3,0": "=TITRE.DOSE([@Titre])",
    });
    expect((await named.heal()).left.mixed).toEqual([]);
  });

  it("writes into no table's column of several formulas, and says what to do instead", async () => {
    const program = inTable({
      "1,0": "=TITRE.DOSE(B2)",
      "2,0": "=TITRE.DOSE(B3)*2",
      "3,0": "=TITRE.DOSE(B4)",
    });
    const healing = await program.heal();
    expect(program.writes).toBe(0);
    expect(causes(healing.left)[0]).toMatch(/^3 cells in a table's column of several formulas/);
  });

  it("says what hindered it when the program refuses", async () => {
    const program = new Waiting(1, { "0,0": dose }, (book) => {
      book.isReadOnly = true;
    });
    const refused = await heal(program.host, () => Promise.resolve());
    expect(isFault(refused) && healingFault(refused)).toMatch(/takes no changes/);
  });

  /** Cells that were handed over by a search. */
  const handedOver = async (program: Waiting, refuses = false): Promise<number> => {
    let cells = 0;
    const read = program.host.read.bind(program.host);
    program.host.read = (questions) => {
      for (const each of questions) {
        if (each.ask === "cells") cells += each.block.rows * each.block.columns;
        if (each.ask === "errors" && refuses) return Promise.resolve(fault("not-offered"));
      }
      return read(questions);
    };
    expect((await program.search()).mendable).toHaveLength(2);
    return cells;
  };

  it("leaves the search to the program, and reads no cell that shows no error", async () => {
    const cells = { "900000,0": dose, "0,0": "=SUM(A1)", "5,5": dose, "7,0": "=SUM(B1)" };
    expect(await handedOver(new Waiting(1, cells))).toBe(2);
  });

  it("looks through the cells itself where the program does not search", async () => {
    const cells = { "59,0": dose, "0,0": "=SUM(A1)", "5,5": dose };
    expect(await handedOver(new Waiting(1, cells), true)).toBe(360);
  });

  it("looks through a long sheet in pieces, and says when it stopped", async () => {
    const locked = (book: MemoryBook): void => {
      for (const sheet of book.sheets) sheet.isProtected = true;
    };
    const program = new Waiting(1, { "60000,0": dose, "0,0": "=1" }, locked);
    expect((await program.search()).locked).toHaveLength(1);
    const larger = new Waiting(1, { "450000,0": dose, "0,0": dose }, locked);
    const search = await larger.search();
    expect(search.isWhole).toBe(false);
    expect(search.locked).toHaveLength(1);
  });

  it("says each sentence in 6 to 200 characters", async () => {
    const program = new Waiting(9, { "0,0": dose, "1,1": dose });
    const sentences = [
      foundSentence(await program.search()) ?? "",
      healedSentence(await program.heal()),
      ...causes({ mendable: [], locked: [], mixed: [], isWhole: true }),
    ];
    for (const sentence of sentences) {
      expect(sentence.length).toBeGreaterThan(5);
      expect(sentence.length).toBeLessThanOrEqual(200);
    }
  });
});

describe("running CHECKS again", () => {
  it("knows a call of CHECKS in either spelling, and no other cell", () => {
    expect(callsChecks("=TITRE.CHECKS()")).toBe(true);
    expect(callsChecks("=_xldudf_TITRE_CHECKS()")).toBe(true);
    expect(callsChecks("=COUNTIF(TITRE.CHECKS(),TRUE)")).toBe(true);
    expect(callsChecks('="TITRE.CHECKS()"')).toBe(false);
    expect(callsChecks("=TITRE.DOSE(checks)")).toBe(false);
  });

  it("writes the same formula into the same cell", async () => {
    const program = new Waiting(0, { "4,1": "=TITRE.CHECKS()" });
    const block = { sheet: "Log", row: 4, column: 1, rows: 1, columns: 1 };
    expect(await writeAgain(program.host, block, "=TITRE.CHECKS()")).toBeUndefined();
    expect(program.formulaAt("4,1")).toBe("=TITRE.CHECKS()");
    expect(program.writes).toBe(1);
  });
});
