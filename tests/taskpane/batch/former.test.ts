import { describe, expect, it } from "vitest";
import { formerWords } from "../../../src/taskpane/batch/former";
import { but, seen } from "./slate";

const words = (former: string): string =>
  formerWords(seen(but({ typed: { former } })))
    .map(({ sentence }) => sentence)
    .join(" ");

/** The whole batch: 1286.13 g as weighed; pure 457.5 g for the acid and 700 g (0.765 %) for the charge. */
describe("what one used to weigh, in words", () => {
  it("is nothing until it is typed", () => {
    expect(words("")).toBe("");
  });

  it("is the dose within its uncertainty", () => {
    expect(words("1290")).toBe("That is the dose, within its uncertainty.");
  });

  // By hand: 1286.1 - 900 = 386.1 g; pure 810: (1157.52 - 810) / 457.54 = 76 %; (810 - 457.54) / 699.98 = 50 %.
  it("is so many grams short, with what that leaves of acid and charge", () => {
    expect(words("900")).toContain("386.1 g less");
    expect(words("900")).toContain("76 % of the acid would be left over");
    expect(words("900")).toContain("50 % of the charge is left");
  });

  it("is too much", () => {
    expect(words("2000")).toContain("713.9 g more");
  });

  // By hand: 700 g x 1.0251337 = 717.57; short by 1286.13 - 718 = 568.1 g.
  it("names the fraction rule kindly, with what it costs, and offers no such rule", () => {
    const said = words("718");
    expect(said).toContain("a rule that many were taught");
    expect(said).toContain("costs 568.1 g of lye");
    expect(words("900")).not.toContain("rule");
  });
});
