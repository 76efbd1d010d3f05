import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";
import { print } from "../../../src/sheet/formula/print";
import { readFormula } from "../../../src/sheet/formula/read";
import { tokensOf } from "../../../src/sheet/formula/token";
import { nodesOf } from "../../../src/sheet/formula/walk";
import { shapeOf, tree, treeOf } from "./trees";

/** Pieces that formulas are made of, good and bad, thrown together. */
const piece = fc.constantFrom(
  ..."= ( ( ) ) { } [ ] , , ; : ! ' \" # @ % ^ & * + - / < > . $ ? \\ é 日 ª 0 1 7 A B".split(" "),
  " ",
  "\n",
  "A1",
  "$B$2",
  "A:A",
  "T[",
  "[@a]",
  "T[[#This Row],[a]]",
  "TRUE",
  "#N/A",
  "#REF!",
  "SUM(",
  "TITRE.DOSE(",
  "_xldudf_TITRE_DOSE(",
  "[2]!",
  "'C:\\a\\[b.xlsx]c'!",
  '"text"',
  "'a b'!",
  "Sheet1!",
  "1.5E+3",
  "LET(",
);
/** A good formula with a piece put in somewhere, or some characters taken out. */
const damaged = fc
  .tuple(tree, fc.nat(), fc.nat({ max: 3 }), fc.oneof(piece, fc.constant("")))
  .map(([whole, place, gap, put]) => {
    const text = print(whole);
    const cut = place % (text.length + 1);
    return text.slice(0, cut) + put + text.slice(cut + gap);
  });
const scrap = fc.oneof(
  damaged,
  fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join("")),
  fc.string({ unit: "binary", maxLength: 60 }),
);

describe("the formula reader", () => {
  it("reads every tree back from its printed text", () => {
    fc.assert(
      fc.property(tree, (wanted) => {
        expect(shapeOf(treeOf(print(wanted)))).toEqual(shapeOf(wanted));
      }),
      { numRuns: 3000 },
    );
  });

  it("prints what it read so that it reads the same again", () => {
    fc.assert(
      fc.property(scrap, (text) => {
        const formula = readFormula(text);
        if (isProblem(formula)) return;
        const again = treeOf(print(formula.tree));
        expect(shapeOf(again)).toEqual(shapeOf(formula.tree));
        expect(print(again)).toBe(print(formula.tree));
      }),
      { numRuns: 5000 },
    );
  });

  it("cuts any text into tokens that join to the same text, each where it says it stands", () => {
    fc.assert(
      fc.property(scrap, (text) => {
        const tokens = tokensOf(text);
        expect(tokens.map((token) => token.text).join("")).toBe(text);
        for (const token of tokens) expect(text.slice(token.start, token.end)).toBe(token.text);
      }),
      { numRuns: 5000 },
    );
  });

  it("ends for any text in a tree or in one sentence with a place, and never throws", () => {
    fc.assert(
      fc.property(scrap, (text) => {
        const formula = readFormula(text);
        if (!isProblem(formula)) return;
        const { fields } = formula;
        if (fields.code !== "broken-formula") throw new Error(fields.code);
        expect(fields.at).toBeGreaterThanOrEqual(1);
        expect(fields.at).toBeLessThanOrEqual(text.length + 1);
        expect(text.slice(fields.at - 1).startsWith(fields.found)).toBe(true);
        expect(say(formula).length).toBeLessThanOrEqual(200);
        expect(say(formula)).not.toMatch(/undefined|\n/);
      }),
      { numRuns: 5000 },
    );
  });

  it("places every part inside the part around it, and where its own text reads the same", () => {
    fc.assert(
      fc.property(tree, (wanted) => {
        const text = print(wanted);
        for (const node of nodesOf(treeOf(text))) {
          expect(node.start).toBeLessThan(node.end);
          const own = treeOf(text.slice(node.start, node.end));
          expect(shapeOf(own)).toEqual(shapeOf(node));
        }
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    ["brackets", "(".repeat(4000) + "1" + ")".repeat(4000)],
    ["calls", "F(".repeat(2700) + "1" + ")".repeat(2700)],
    ["minus signs", "-".repeat(8000) + "1"],
    ["braces", "{".repeat(8000)],
    ["quotation marks", '"'.repeat(8191)],
    ["apostrophes", "'".repeat(8192)],
    ["square brackets", "T[".repeat(4000)],
    ["every operator nested in brackets", "(1=1&1+1*1^1%:A1 ".repeat(450)],
  ])("gives up with a sentence on a formula of nothing but %s", (_, text) => {
    const formula = readFormula(text);
    if (!isProblem(formula)) throw new Error("it was read");
    expect(say(formula)).toMatch(/^The formula cannot be read at character \d+/);
  });

  it("takes the deepest nesting a spreadsheet takes, through every operator", () => {
    const text = "(1=1&1+1*1^".repeat(120) + "1" + ")".repeat(120);
    expect(print(treeOf(text))).toContain("1=1&1+1*1^");
    expect(treeOf(`=${"IF(A1,".repeat(64)}1${")".repeat(64)}`).kind).toBe("call");
  });

  it("takes a sum of four thousand cells, and walks and prints it", () => {
    const text = Array.from({ length: 2700 }, (_, row) => `A${(row % 9) + 1}`).join("+");
    const sum = treeOf(text);
    expect([...nodesOf(sum)].length).toBe(2700 * 2 - 1);
    expect(print(sum)).toBe(text);
  });

  it("refuses a formula longer than a cell holds", () => {
    const formula = readFormula("1+".repeat(4096) + "1");
    expect(isProblem(formula) && say(formula)).toMatch(/longer than a cell/);
  });
});
