/** The ways water is known by, as fields of whichever task asks. */
import type { ComponentType } from "react";
import { caution } from "../../core/batch/cautions";
import { type Exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import type { NumberFigures } from "../fields/number-figures";
import { Say } from "../widgets/say";
import { digits } from "../widgets/shown-number";
import { Spoken } from "../widgets/spoken";
import type { WaterBy, WaterField } from "./fields";
import { dryingDoubt, isTooCoarse, scaleSays, waterFound, waterTrouble } from "./found";

export interface WaterWaysProps {
  readonly by: WaterBy;
  readonly figures: Pick<NumberFigures<WaterField>, "in">;
  readonly Choose: ComponentType<{ field: "waterBy" }>;
  readonly Figure: ComponentType<{ field: WaterField }>;
  readonly inMark: (text: string) => string;
  /** % that the scale is to judge. */
  readonly limit: Exact;
}

const fieldsOf: Readonly<Record<WaterBy, readonly WaterField[]>> = {
  typed: ["water"],
  weighed: ["dish", "wetMass", "dryMass", "dryingStep"],
  gas: ["pressureRise", "gasSpace", "gasTemperature", "gasMass"],
};

export function WaterWays({ by, figures, Choose, Figure, inMark, limit }: WaterWaysProps) {
  const found = by === "typed" ? undefined : waterFound(by, figures);
  const doubt = by === "weighed" ? dryingDoubt(figures) : undefined;
  return (
    <>
      <Choose field="waterBy" />
      {by === "gas" ? <Say tone="safety">{caution("hydride")}</Say> : null}
      {by === "weighed" ? (
        <p className="soft">Dried at 103 °C until it loses no more (ISO 662, commonly cited).</p>
      ) : null}
      {fieldsOf[by].map((field) => (
        <Figure key={field} field={field} />
      ))}
      <Spoken>
        {isProblem(found) ? <Say tone="check">{inMark(waterTrouble(found))}</Say> : null}
        {found !== undefined && !isProblem(found) ? (
          <Say tone="know">{inMark(`Water: ${digits(found, 3)} % of the mass.`)}</Say>
        ) : null}
        {doubt === undefined ? null : (
          <Say tone={isTooCoarse(doubt, limit) ? "check" : "know"}>
            {inMark(scaleSays(doubt, limit))}
          </Say>
        )}
      </Spoken>
    </>
  );
}
