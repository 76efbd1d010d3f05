import { caution } from "../../core/batch/cautions";
import { whatIf } from "../../core/batch/what-if";
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { amountUnitNames } from "../../core/quantity/units";
import { limits } from "../../core/reference/limits";
import { list } from "../arguments";
import { assayPercent, baseCharge, limitFfaPercent } from "../common";
import { worksheetFunction } from "../define";
import { amountUnit, base, oil } from "../words";

/** What stands in the corner of the table. */
export const corner = (unit: string): string =>
  `Catalyst, g as weighed: ${unit} of oil down, acid value mg KOH/g across`;

export const WHATIF = worksheetFunction(
  "WHATIF",
  "Catalyst, g as weighed, for many batch sizes (down) and acid values (across), as a table.",
  {
    amounts: list(limits.amount, "amount", "Batch sizes, in the unit that follows."),
    unit: amountUnit(`${amountUnitNames}, for all of the batch sizes.`),
    acidValues: list(limits.acidValue, "acid value", "Acid values to compare, mg KOH/g."),
    base: base("The base of the lye."),
    assayPercent,
    baseCharge,
    oil,
    limitFfaPercent,
  },
  (given) => {
    const amounts = given.amounts.filled;
    const acidValues = given.acidValues.filled;
    const doses = whatIf({
      amounts,
      acidValues,
      unit: given.unit,
      base: given.base,
      assay: given.assayPercent,
      baseCharge: given.baseCharge,
      oil: given.oil,
      limitFfa: given.limitFfaPercent,
    });
    if (isProblem(doses)) return doses;
    const rows = doses.map((row, index) => [
      amounts[index] ?? "",
      ...row.map((dose) => (isProblem(dose) ? say(dose) : dose)),
    ]);
    return [[corner(given.unit.shown), ...acidValues], ...rows];
  },
  {
    result: "a table of g as weighed",
    equation:
      "({amounts} as kg * {acidValues} / 56.1 * {base} + 10 * {amounts} as kg * {baseCharge}) / ({assayPercent} / 100)",
    notes: [
      "A volume counts as at 20 C. Above the limit a cell says so in words instead of a dose.",
      "It spills: leave room below and to the right.",
      caution("permission"),
    ],
    example: {
      formula: '=TITRE.WHATIF({100,200},"kg",{5.61},"KOH",100,1)',
      gives: [
        ["Catalyst, g as weighed: kg of oil down, acid value mg KOH/g across", 5.61],
        [100, 1561.053],
        [200, 3122.106],
      ],
    },
    sources: ["ciaaw", "codex"],
  },
);
