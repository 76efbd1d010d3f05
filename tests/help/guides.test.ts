import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { isMissing, isProblem } from "../../src/core/problem/problem";
import { say } from "../../src/core/problem/wording";
import { catalogue } from "../../src/functions/catalogue";
import { guides } from "../../src/help/guides";
import type { Figure, Guide, Part } from "../../src/help/guides/guide";
import { helpSite } from "../../src/help/site";
import { evaluateFormula } from "../functions/evaluate-formula";

interface Row extends Figure {
  readonly at: string;
}

const figuresOf = (part: Part): readonly Figure[] => {
  if (part.kind === "worked") return part.rows;
  if (part.kind !== "mistakes") return [];
  return part.mistakes.flatMap(({ wrongFigure, rightFigure }) => [wrongFigure, rightFigure]);
};

const rows: Row[] = guides.flatMap(({ file, parts }: Guide) =>
  parts.flatMap((part) => figuresOf(part).map((figure) => ({ ...figure, at: file }))),
);
const figures = rows.filter(({ shows }) => /^[\d.]+$/.test(shows));
const sentences = rows.filter(({ shows }) => !/^[\d.]+$/.test(shows));

/** Arithmetic as it stands on the page, worked out by the machine and not by our code. */
const onPaper = (arithmetic: string): number => {
  const plain = arithmetic
    .replaceAll("×", "*")
    .replaceAll("÷", "/")
    .replaceAll("−", "-")
    .replaceAll("^", "**");
  if (!/^[\d\s.()*/+-]+$/.test(plain)) throw new Error(`${arithmetic} is no arithmetic`);
  return Number(vm.runInNewContext(plain));
};

const placesOf = (shows: string): number => shows.split(".")[1]?.length ?? 0;

describe("the guides", () => {
  it("hold figures enough to go by", () => {
    expect(figures.length).toBeGreaterThan(30);
    expect(sentences.length).toBeGreaterThan(1);
  });

  it.each(figures)("$at: $byHand is $shows by hand", ({ byHand, shows }) => {
    expect(onPaper(byHand ?? "").toFixed(placesOf(shows))).toBe(shows);
  });

  it.each(figures.filter(({ formula }) => formula !== undefined))(
    "$at: $formula shows $shows",
    ({ formula = "", shows }) => {
      const answer = evaluateFormula(formula);
      expect(typeof answer).toBe("number");
      expect(Number(answer).toFixed(placesOf(shows))).toBe(shows);
    },
  );

  it.each(sentences)("$at: $formula says $shows", ({ formula = "", shows }) => {
    const answer = evaluateFormula(formula);
    const shown = isProblem(answer)
      ? `${isMissing(answer) ? "#N/A" : "#VALUE!"} ${say(answer)}`
      : String(answer);
    expect(shown.startsWith(shows)).toBe(true);
  });

  it("name only functions that there are", () => {
    const site = helpSite(catalogue);
    const ids: string[] = catalogue.map(({ id }) => id);
    const named = guides.flatMap(({ file }) =>
      [...(site[file] ?? "").matchAll(/TITRE\.([A-Z]+)\(/g)].map(([, id = ""]) => ({ file, id })),
    );
    expect(named.length).toBeGreaterThan(guides.length);
    expect(named.filter(({ id }) => !ids.includes(id))).toEqual([]);
  });

  it("never offer the rule that mixes two fractions as a way to a dose", () => {
    const offered = guides.flatMap(({ parts }) =>
      parts.flatMap((part) =>
        part.kind === "mistakes" ? part.mistakes.map(({ right }) => right) : [],
      ),
    );
    expect(offered.join(" ")).not.toMatch(/fraction of the catalyst/);
  });

  it("say what is common practice without a source, and carry the cautions", () => {
    const site = helpSite(catalogue);
    expect(site["first-titration.html"]).toContain("common practice, no source");
    expect(site["first-titration.html"]).toContain("A result is not a permission");
    expect(site["titrant.html"]).toContain("cautions.html");
  });
});
