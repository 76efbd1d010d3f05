/**
 * A temperature typed in °F. The unit goes with the figure, "104 F", so that it means the same whatever oil
 * is measured in afterwards; the box shows the figure alone, with its unit beside it.
 */
import { cardUnitsFor } from "../../core/card/units";
import { type Exact, exact } from "../../core/exact/exact";
import { amountUnitNamed, fahrenheitOf, offeredUnits } from "../../core/quantity/units";
import { type NumberFieldFact, withoutF } from "../widgets/judged";

/** Who measures oil in US gallons or pounds reads a thermometer in °F. */
export const readsFahrenheit = (unit: string | undefined): boolean =>
  cardUnitsFor(amountUnitNamed(unit ?? "")) === "us";

/** The same of the unit that My bench says: "US gal". */
export const benchReadsFahrenheit = (shown: string | undefined): boolean =>
  readsFahrenheit(offeredUnits.find((name) => amountUnitNamed(name)?.shown === shown));

export interface TemperatureBox {
  readonly fact: NumberFieldFact;
  /** As it stands in the box. */
  readonly text: string;
  /** As it is kept, of what is typed in the box. */
  readonly kept: (typed: string) => string;
}

/** "Left empty: 20 °C." is 68 °F. */
const inFahrenheit = (words: string): string =>
  words.replace(
    /(-?\d+(?:\.\d+)?) °C/g,
    (_, figure: string) => `${fahrenheitOf(exact(figure)).toString()} °F`,
  );

/** As it was read off a thermometer: 40 °F, and not the 4.44444 °C that it comes to. */
export function temperatureWords(text: string | undefined, celsius: Exact): string {
  const figure = withoutF(text ?? "");
  return figure === undefined ? `${celsius.toString()} °C` : `${figure.trim()} °F`;
}

/** What is typed already stays in its own unit; an empty box is in what is read at this bench. */
export function temperatureBox(
  fact: NumberFieldFact,
  text: string,
  isFahrenheit: boolean,
): TemperatureBox {
  const figure = withoutF(text);
  const isOfF = text.trim() === "" ? isFahrenheit : figure !== undefined;
  if (!isOfF) return { fact, text, kept: (typed) => typed };
  return {
    fact: {
      ...fact,
      unit: "°F",
      ...(fact.hint === undefined ? {} : { hint: inFahrenheit(fact.hint) }),
    },
    text: figure ?? "",
    kept: (typed) => (typed.trim() === "" || withoutF(typed) !== undefined ? typed : `${typed} F`),
  };
}
