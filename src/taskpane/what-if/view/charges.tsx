/** Published base charges to choose from, each with its source. None is taken for granted. */
import { Button } from "@fluentui/react-components";
import { asCharged } from "../../../core/batch/as-charged";
import { exact } from "../../../core/exact/exact";
import { as, quantity } from "../../../core/quantity/quantity";
import { isProblem } from "../../../core/problem/problem";
import { type PublishedCharge, publishedCharges } from "../../../core/reference/base-charges";
import type { Base } from "../../../core/reference/bases";
import { oilNamed, oilNotNamed, usualTemperature } from "../../../core/reference/oils";
import { sources } from "../../../core/reference/sources";
import { useDesk, useMark } from "./desk";

/** As percent of the oil's mass; a charge by the litre is for a litre at 20 C. */
function percentOf({ amount, unit }: PublishedCharge, oilName: string): string | undefined {
  if (unit === "%") return amount;
  const oil = oilNamed(oilName) ?? oilNotNamed;
  const given = { unit, amount: as("g/L", exact(amount)), is: "pure" } as const;
  // a fat that is solid at 20 C has no litre there
  const at = oil.liquidFrom?.gt(usualTemperature) ? oil.liquidFrom : usualTemperature;
  const found = asCharged(given, quantity("%", "100"), oil, at);
  return isProblem(found) ? undefined : found.toSignificantDigits(3).toFixed();
}

export interface ChargesProps {
  readonly base: Base["name"];
  readonly onTake: (percent: string) => void;
}

export function Charges({ base, onTake }: ChargesProps) {
  const { draft } = useDesk().view;
  const inMark = useMark();
  const found = publishedCharges.filter((each) => each.base === base);
  if (found.length === 0) return null;
  return (
    <details className="more">
      <summary>Published base charges of {base}</summary>
      {found.map((each) => {
        const percent = percentOf(each, draft.picked.oil);
        if (percent === undefined) return null;
        const by = each.unit === "%" ? "" : `${each.amount} g/L is `;
        return (
          <Button
            key={`${each.amount} ${each.unit} ${each.source}`}
            className="wide published"
            onClick={() => {
              onTake(inMark(percent));
            }}
          >
            <span>
              <strong>{inMark(`${by}${percent} %`)}</strong>: {inMark(each.about)}
              <span className="soft source">{sources[each.source]}</span>
            </span>
          </Button>
        );
      })}
    </details>
  );
}
