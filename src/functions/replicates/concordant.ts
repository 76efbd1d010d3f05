import { problem } from "../../core/problem/problem";
import { limits } from "../../core/reference/limits";
import { concordant } from "../../core/replicates/concordance";
import { list, number } from "../arguments";
import { worksheetFunction } from "../define";

const fewest = 2;

export const CONCORDANT = worksheetFunction(
  "CONCORDANT",
  "TRUE when the readings agree within a limit: largest less smallest, compared exactly.",
  {
    readings: list(limits.reading, "reading", "The readings, mL. Empty cells are ignored."),
    limit: number(limits.concordanceLimit, "limit", "The largest spread you accept, mL."),
  },
  (given) => {
    const { filled } = given.readings;
    if (filled.length >= fewest) return concordant(filled, given.limit);
    return problem({
      code: "too-few",
      argument: "readings",
      called: "reading",
      given: filled.length,
      needed: fewest,
    });
  },
  {
    result: "TRUE or FALSE",
    equation: "max({readings}) - min({readings}) <= {limit}",
    notes: [
      "Readings exactly at the limit agree: 2.25 and 2.35 within 0.10 are TRUE.",
      "0.10 mL is usual with a 25 or 50 mL burette (common practice, no source); for titres of 1 to 5 mL, 0.05 mL says more.",
    ],
    example: { formula: "=TITRE.CONCORDANT({2.25,2.35},0.1)", gives: true },
    sources: ["practice"],
  },
);
