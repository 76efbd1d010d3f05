/** The charge of My bench, for a table that counts it as percent of the oil's mass, pure. */
import { asCharged } from "../../core/batch/as-charged";
import { volumeTemperature } from "../../core/batch/batch";
import { exact, hundred } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import { oilNamed, oilNotNamed } from "../../core/reference/oils";
import { type BenchValues, chargeIsWords, chargeUnitWords } from "../../workbook/tables/bench";
import { digits } from "../widgets/shown-number";

const shownDigits = 4;

export interface BenchCharge {
  /** % of the oil's mass, pure, as plain digits. */
  readonly percent: string;
  /** As the bench says it: "5.5 g/L, as weighed". */
  readonly words: string;
}

/** @param oilName of the oil in hand: a charge by the litre is another percentage of each */
export function benchCharge(
  values: BenchValues,
  base: string,
  oilName: string,
): BenchCharge | undefined {
  const own: Readonly<Record<string, string | undefined>> = values;
  const [charge, assay] = [own[`charge${base}`], own[`assay${base}`]];
  const unit = values.chargeUnit === chargeUnitWords["%"] ? "%" : "g/L";
  const is = values.chargeIs === chargeIsWords.pure ? "pure" : "as weighed";
  if (!charge || !values.chargeUnit || !values.chargeIs) return undefined;
  if (is === "as weighed" && !assay) return undefined;
  const oil = oilNamed(oilName) ?? oilNotNamed;
  const amount = exact(charge);
  const given =
    unit === "%"
      ? ({ unit, amount: as("%", amount), is } as const)
      : ({ unit, amount: as("g/L", amount), is } as const);
  const whole = as("%", assay ? exact(assay) : hundred);
  const found = asCharged(given, whole, oil, volumeTemperature(oil));
  if (isProblem(found)) return undefined;
  const isSame = unit === "%" && is === "pure";
  return {
    percent: isSame ? charge : digits(found, shownDigits),
    words: `${charge}${unit === "%" ? " % of the oil" : " g/L"}, ${is}`,
  };
}
