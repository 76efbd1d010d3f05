/**
 * One unit for another: those that a bench and its stores use. Pounds and ounces are not among them:
 * LibreOffice 7.4 takes a pound for 453.5923 g, and others for the 453.59237 g it is.
 */
import { ofValues, type Standard } from "./adapter";
import { number, text } from "./convert";
import { doubt } from "./doubt";
import { Fault } from "./value";

type Kind = "mass" | "volume" | "length" | "time" | "temperature";

interface Unit {
  readonly kind: Kind;
  /** So many of the kind's first unit. */
  readonly size: number;
  /** Where the unit's 0 lies, in the kind's first unit. */
  readonly zero?: number;
}

const inch = 0.0254;
/** Cubic inches in a litre are exact; a gallon of the United States has 231. */
const gallon = 231 * inch ** 3 * 1000;

const sizes: Readonly<Record<Kind, Readonly<Record<string, number>>>> = {
  mass: { g: 1, mg: 1e-3, kg: 1e3 },
  volume: { l: 1, L: 1, ml: 1e-3, mL: 1e-3, m3: 1e3, gal: gallon, qt: gallon / 4, pt: gallon / 8 },
  length: { m: 1, mm: 1e-3, cm: 1e-2, in: inch, ft: 12 * inch },
  time: { sec: 1, s: 1, mn: 60, min: 60, hr: 3600, day: 86_400, d: 86_400 },
  temperature: {},
};

const zeroCelsius = 273.15;
const degree = 5 / 9;

const units: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...Object.entries(sizes).flatMap(([kind, known]) =>
    Object.entries(known).map(([name, size]) => [name, { kind: kind as Kind, size }] as const),
  ),
  ["K", { kind: "temperature", size: 1, zero: 0 }],
  ["C", { kind: "temperature", size: 1, zero: zeroCelsius }],
  ["F", { kind: "temperature", size: degree, zero: zeroCelsius - 32 * degree }],
]);

function converted(figure: number, from: string, to: string): number {
  const [first, last] = [units.get(from), units.get(to)];
  // a unit this list does not have is none to be judged here
  if (!first || first.kind !== last?.kind) {
    doubt();
    throw new Fault("#N/A");
  }
  if (from === to) return figure;
  const offset = (first.zero ?? 0) - (last.zero ?? 0);
  return (figure * first.size + offset) / last.size;
}

export const conversion: Readonly<Record<string, Standard>> = {
  CONVERT: ofValues(3, 3, (cell = null, from = null, to = null) => {
    if (typeof from !== "string" || typeof to !== "string") doubt();
    return converted(number(cell), text(from), text(to));
  }),
};
