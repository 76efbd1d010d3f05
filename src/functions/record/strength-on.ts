import { computed } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { strengthOn } from "../../core/record/strength-line";
import { strengthInWords } from "../../core/record/strength-words";
import { limits } from "../../core/reference/limits";
import { list, number } from "../arguments";
import { worksheetFunction } from "../define";
import { pairLists } from "../pairing";

export const STRENGTHON = worksheetFunction(
  "STRENGTHON",
  "A titrant's strength on a day, with its ±, by a straight line through the days it was set.",
  {
    dates: list(limits.day, "date", "The days the strength was set on, as dates."),
    strengths: list(
      limits.molarity,
      "strength",
      "The strength found on each, mol/L, in the same order.",
    ),
    day: number(limits.day, "day", "The day you ask about, as a date."),
  },
  (given) => {
    const pairs = pairLists(
      given.dates,
      given.strengths,
      { first: "date", second: "strength", advice: "each needs the other" },
      ["dates", "strengths"],
    );
    if (isProblem(pairs)) return pairs;
    const line = strengthOn(
      pairs.filter((pair) => pair !== null),
      given.day,
    );
    if (isProblem(line)) return line;
    return [
      ["strength on that day", line.strength, "mol/L"],
      ["± (95 %)", computed(line.halfWidth), "mol/L"],
      ["change in 30 days", line.change, "%"],
      ["scatter about the line", computed(line.scatter), "mol/L"],
      ["verdict", strengthInWords(line), ""],
    ];
  },
  {
    result: "label, figure and unit, row by row",
    equation: "mean({strengths}) + b * ({day} - mean({dates}))",
    notes: [
      "Three strengths or more, on two days or more. Far from the days it was set on the ± grows fast.",
      "Alkali draws carbon dioxide from the air and weakens; alcohol dries away and strengthens (common practice, no source).",
    ],
    example: {
      formula: "=TITRE.STRENGTHON({45658;45668;45678},{0.1;0.0995;0.0992},45688)",
      gives: [
        ["strength on that day", 0.0987666667, "mol/L"],
        ["± (95 %)", 0.00158474216, "mol/L"],
        ["change in 30 days", -1.2149848, "%"],
        ["scatter about the line", 0.0000816496580928, "mol/L"],
        [
          "verdict",
          "No change that chance does not explain: the mean of all is as good as the line.",
          "",
        ],
      ],
    },
    sources: ["gum", "practice"],
  },
);
