import { computed } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { limits } from "../../core/reference/limits";
import { usual } from "../../core/reference/defaults";
import { phthalateFigures } from "../../core/uncertainty/bench";
import { expand } from "../../core/uncertainty/expanded";
import { list, usualNumber } from "../arguments";
import { blanks } from "../blanks";
import { titres } from "../common";
import { worksheetFunction } from "../define";
import { beside, measuredOf, steps } from "../uncertainty/titration";

const phthalate = { called: "KHP mass", argument: "khpMasses" };

export const KHPUNCERTAINTY = worksheetFunction(
  "KHPUNCERTAINTY",
  "Expanded uncertainty of a strength set against KHP: the ± of a 95 % interval, in percent.",
  {
    khpMasses: list(
      limits.phthalateMass,
      "KHP mass",
      "Grams of KHP in each titration, in the order of the titres; one cell serves all.",
    ),
    titres,
    blanks: blanks("required"),
    massStep: steps.massStep,
    titreStep: steps.titreStep,
    purityPercent: usualNumber(
      limits.plusMinusPercent,
      usual.phthalateLimits,
      "Limits of the purity of the KHP, ± percent.",
    ),
    ...beside,
  },
  (given) => {
    const found = measuredOf(given, given.khpMasses, given.purityPercent, phthalate);
    if (isProblem(found)) return found;
    const bench = phthalateFigures(found);
    return isProblem(bench) ? bench : computed(expand(bench).halfWidth);
  },
  {
    result: "% of the strength, half-width of the 95 % interval",
    equation:
      "100 * sqrt((t * s * sqrt(1/n + 1/k))^2 / V^2 + 1.96^2 * (2 * {titreStep}^2 / 6 / V^2 + {massStep}^2 / (6 * w * m^2) + ({purityPercent}^2 + {burettePercent}^2) / 30000))",
    notes: [
      "What molarityPercent of FFAUNCERTAINTY asks for. It is taken there as limits, which is a little on the safe side.",
      "One titration alone has no scatter: titrate two or more, or bring in your usual scatter.",
    ],
    example: {
      formula: "=TITRE.KHPUNCERTAINTY({0.51,0.51},{25.05,25.05},{0.05},0.01,0.05)",
      gives: 1.13365960392909,
    },
    sources: ["gum", "quam"],
  },
);
