/** Published base charges, as percent of the oil's mass: that is what a column of the table holds. */
import { asCharged } from "../../../core/batch/as-charged";
import { exact } from "../../../core/exact/exact";
import { as, quantity } from "../../../core/quantity/quantity";
import { isProblem } from "../../../core/problem/problem";
import type { PublishedCharge } from "../../../core/reference/base-charges";
import type { Base } from "../../../core/reference/bases";
import { oilNamed, oilNotNamed, usualTemperature } from "../../../core/reference/oils";
import { PublishedCharges } from "../../fields/published-charges";
import { useDesk, useMark } from "./desk";

/** As percent of the oil's mass; a charge by the litre is for a litre at 20 C. */
function percentOf({ amount, unit }: PublishedCharge, oilName: string): string {
  if (unit === "%") return amount;
  const oil = oilNamed(oilName) ?? oilNotNamed;
  const given = { unit, amount: as("g/L", exact(amount)), is: "pure" } as const;
  // a fat that is solid at 20 C has no litre there
  const at = oil.liquidFrom?.gt(usualTemperature) ? oil.liquidFrom : usualTemperature;
  const found = asCharged(given, quantity("%", "100"), oil, at);
  if (isProblem(found)) throw new Error("a published charge has no percent");
  return found.toSignificantDigits(3).toFixed();
}

export interface ChargesProps {
  readonly base: Base["name"];
  readonly onTake: (percent: string) => void;
}

export function Charges({ base, onTake }: ChargesProps) {
  const { oil } = useDesk().view.draft.picked;
  const inMark = useMark();
  const level = (charge: PublishedCharge): string => {
    const percent = `${percentOf(charge, oil)} % of the oil`;
    return charge.unit === "%" ? percent : `${charge.amount} ${charge.unit} is ${percent}`;
  };
  return (
    <PublishedCharges
      base={base}
      isOpen={false}
      level={level}
      use={(charge) => `${percentOf(charge, oil)} %`}
      inMark={inMark}
      onTake={(charge) => {
        onTake(inMark(percentOf(charge, oil)));
      }}
    />
  );
}
