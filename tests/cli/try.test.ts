import { execFileSync, spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { columns } from "../../src/cli/try/columns";
import { report } from "../../src/cli/try/report";
import { root } from "../rules/sources-of";

const lines = (formula: string): string[] => report(formula).text.split("\n");

describe("npm run try", () => {
  it("prints the function, each argument, the equation with its figures, and the answer", () => {
    const { text, isComplete } = report("=TITRE.CORRECTED({2.4,2.5,2.45},{0.15})");
    expect(isComplete).toBe(true);
    expect(text.split("\n")).toEqual([
      "TITRE.CORRECTED: Corrected titre: mean titre less mean blank, mL.",
      "  titres  2.4, 2.5, 2.45 mL  Replicate titres, mL. Empty cells are ignored.",
      "  blanks            0.15 mL  Blank titres of the same solvent, mL, or the word neutralised.",
      "  mean(titres) − mean(blanks)",
      "  = mean(2.4, 2.5, 2.45) − mean(0.15)",
      "  = 2.3   mL",
      "  In plain formulas:",
      "    =SUM({2.4,2.5,2.45})/3-0.15",
    ]);
  });

  it("takes the formula of the README", () => {
    const text = lines('=TITRE.DOSE({2.4,2.5},"neutralised",0.1,7.05,91.5,"KOH",90,0.765)');
    expect(text[0]).toMatch(/^TITRE\.DOSE: /);
    expect(text).toContain(
      "  = (91.5 × 0.1 × mean(({2.4, 2.5} − 0) ÷ 7.05) × 56.1053 + 10 × 91.5 × 0.765) ÷ (90 ÷ 100)",
    );
    // by hand: 91.5 x 0.1 x 2.45 / 7.05 = 3.179787234 mol; x 56.1053 + 699.975 g, over 0.9
    const answer = text.find((line) => line.endsWith("g as weighed"));
    const [figure] = /[\d.]+/.exec(answer ?? "") ?? [];
    expect(Number(figure)).toBeCloseTo((91.5 * 0.1 * (2.45 / 7.05) * 56.1053 + 699.975) / 0.9, 9);
  });

  it("prints an answer that spills as an aligned table", () => {
    const text = lines("=TITRE.EACHACIDVALUE({2.1,3.1;4,25},{0.1},0.1,{5,7.5;8,10})");
    // by hand: 5.61 x (V - 0.1) / m
    const plain = text.indexOf("  In plain formulas:");
    expect(text.slice(plain - 2, plain)).toEqual([
      "       2.244    2.244",
      "    2.734875  13.9689",
    ]);
  });

  it("prints the plain formulas with a line for each helper cell, and for each cell of a table", () => {
    const text = lines("=TITRE.CORRECTED(B2:B4,C2)").filter((line) => line.includes("plain"));
    // without figures there is no answer to compare with
    expect(text).toEqual([]);
    const table = lines("=TITRE.EACHACIDVALUE({2.1,3.1},{0.1},0.1,{5,7.5})");
    expect(table.filter((line) => /^ {4}H\d+ {2}\w.*: =/.test(line))).toHaveLength(7);
    expect(table.slice(-2)).toEqual([
      '    A1  =IF(H7,IF(H5="","",56.1*0.1*H5))',
      '    B1  =IF(H7,IF(H6="","",56.1*0.1*H6))',
    ]);
  });

  it("says where a copy keeps what stands there", () => {
    expect(lines("=TITRE.CHECKS()").at(-1)).toMatch(/a copy keeps what stands there/);
  });

  it("prints several calls, an outer one before those inside it", () => {
    const heads = lines("=TITRE.FFAFROMACIDVALUE(TITRE.ACIDVALUE(2.3,0.1,10))+TITRE.BLEND(10,2,4)");
    expect(
      heads.filter((line) => line.startsWith("TITRE.")).map((line) => line.split(":")[0]),
    ).toEqual(["TITRE.FFAFROMACIDVALUE", "TITRE.ACIDVALUE", "TITRE.BLEND"]);
  });

  it("prints the error and the sentence of a problem, which is an answer too", () => {
    const wrong = report('=TITRE.CATALYST(100,50,"KOH",90,0.7)');
    expect(wrong.isComplete).toBe(true);
    expect(wrong.text).toMatch(/ {2}#VALUE!: 25 % FFA is above the limit of 5 %/);
    expect(report('=TITRE.CORRECTED(2.4,{""})').text).toMatch(/ {2}#N\/A: No blank yet/);
  });

  it.each([
    ["nothing", "", /^Give a formula in single quotes/],
    ["an unknown function", "=TITRE.DOES(1)", /no function "TITRE\.DOES"[^]*DOSE/],
    ["none of ours", "=SUM(1,2)", /calls no TITRE function/],
    ["a broken formula", "=TITRE.DOSE(1", /cannot be read at character 12/],
    ["a cell", "=TITRE.BLEND(A1,2,4)", /No answer: "A1" has no value here: write the figure/],
  ])("refuses %s with a sentence", (_, formula, sentence) => {
    const { text, isComplete } = report(formula);
    expect(isComplete).toBe(false);
    expect(text).toMatch(sentence);
  });

  it("runs from the command line, and ends with code 1 when there is no answer", () => {
    const command = ["--import", "tsx", "src/cli/try.ts"];
    const out = execFileSync(process.execPath, [...command, "=TITRE.BLEND(10,2,4)"], {
      cwd: root,
      encoding: "utf8",
    });
    expect(out).toMatch(/= 0\.25/);
    const failed = spawnSync(process.execPath, [...command, "=TITRE.DOES(1)"], { cwd: root });
    expect(failed.status).toBe(1);
  });
});

describe("columns", () => {
  it("stand figures to the right and words to the left, and let a long cell hang over", () => {
    const long = "x".repeat(100);
    expect(
      columns([
        ["a", "1", "b"],
        ["longer", "12.5", ""],
        [long, "", "c"],
      ]),
    ).toEqual(["  a          1  b", "  longer  12.5", `  ${long}        c`]);
  });
});
