/** The weigh-out as lines to read at the scale: what, how much, and what goes with it. */
import type { Batch } from "../../core/batch/batch";
import { waterOf } from "../../core/batch/water";
import { cardUnitsFor } from "../../core/card/units";
import { hundred, thousand } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { type AmountUnit, amountUnitNamed } from "../../core/quantity/units";
import { as, type Gram, type Kilogram } from "../../core/quantity/quantity";
import { lotMark } from "../lots/lot-mark";
import { fixed } from "../widgets/shown-number";
import { withMark } from "../widgets/typed-number";
import { type Mix, sharesShown } from "./mix";
import { about, amount, amountTo, doseDoubt, poundsText } from "./amount-text";
import { inPounds } from "./picks";
import type { Seen } from "./seen";

export interface Line {
  readonly what: string;
  readonly figure: string;
  readonly unit: string;
  /** Under it, in small. */
  readonly also: readonly string[];
}

/** Grams of water: two parts of a sentence are compared at the same digits. */
const waterPlaces = 3;

const grams = (mass: Kilogram): Gram => as("g", mass.times(thousand));

/** Where oil is measured in gallons, so is what goes in beside it. */
const gallonOf = ({ draft }: Seen): AmountUnit | undefined => {
  const unit = amountUnitNamed(draft.picked.unit);
  return unit?.name === "us_gal" || unit?.name === "uk_gal" ? unit : undefined;
};

/** Who weighs oil in pounds measures methanol in gallons, as on the bench card. */
const methanolGallon = ({ draft }: Seen): AmountUnit | undefined => {
  const units = cardUnitsFor(amountUnitNamed(draft.picked.unit));
  return units === "metric" ? undefined : amountUnitNamed(units === "us" ? "us_gal" : "uk_gal");
};

const pounds = ({ draft, mark }: Seen, mass: Gram): string[] =>
  inPounds(draft.picked) === "yes" ? [poundsText(mass, mark)] : [];

function oilLines(seen: Seen, mix: Mix, mass: Kilogram): Line[] {
  const { mark } = seen;
  const gallon = gallonOf(seen);
  const whole = seen.figures.value("amount");
  const line = (what: string, own: Kilogram, also: string[]): Line => {
    const weighed = `${amount(own, mark)} kg`;
    if (gallon && whole) {
      const figure = amount(whole.times(own).div(mass), mark);
      return {
        what,
        figure,
        unit: gallon.shown,
        also: [weighed, ...pounds(seen, grams(own)), ...also],
      };
    }
    return {
      what,
      figure: amount(own, mark),
      unit: "kg",
      also: [...pounds(seen, grams(own)), ...also],
    };
  };
  const [only] = mix.lots;
  if (mix.lots.length === 1 && only) return [line(`Oil, lot ${lotMark(only.recorded)}`, mass, [])];
  const shares = sharesShown(mix);
  return mix.lots.map(({ recorded, percent }, at) =>
    line(`Oil, lot ${lotMark(recorded)}`, as("kg", mass.times(percent).div(hundred)), [
      withMark(`${shares[at] ?? ""} % of the mass`, mark),
    ]),
  );
}

function methanolLine(seen: Seen, made: Batch): Line {
  const { mark } = seen;
  const percent = withMark(fixed(made.methanolVolumePercent, 1), mark);
  const brings = made.methanolBrought.isZero()
    ? []
    : [
        `${amount(made.methanolVolume, mark)} L less the ${amount(made.methanolBrought, mark)} L that the methoxide solution brings`,
      ];
  const gallon = methanolGallon(seen);
  const litres = `${amount(made.methanolToAdd, mark)} L`;
  return {
    what: made.methanolBrought.isZero() ? "Methanol" : "Methanol to add",
    figure: amount(gallon ? made.methanolToAdd.div(gallon.factor) : made.methanolToAdd, mark),
    unit: `${gallon ? gallon.shown : "L"} at 20 °C`,
    also: [
      ...(gallon ? [litres] : []),
      ...brings,
      `${amount(made.methanol, mark)} kg in all, ${percent} % of the oil’s volume`,
    ],
  };
}

function lyeLine(seen: Seen, made: Batch): Line {
  const { draft, mark, working } = seen;
  const { halfWidth } = working;
  const lot = draft.words.lyeLot.trim();
  const assay = seen.figures.value("assay");
  const doubt = halfWidth
    ? [doseDoubt(made, halfWidth, mark)]
    : ["Its uncertainty is not known: the titration has no ±."];
  const ofAssay = assay
    ? [
        `If the lye is 1 % weaker than its label, about ${about(made.catalyst.div(assay), mark)} g more.`,
      ]
    : [];
  const of = lot === "" ? "" : `, lot ${lot}`;
  return {
    what: `${working.base.name}${of}, ${withMark(assay?.toString() ?? "", mark)} %`,
    figure: amount(made.catalyst, mark),
    unit: "g",
    also: [...pounds(seen, made.catalyst), ...doubt, ...ofAssay],
  };
}

/** @returns no lines while there is no weigh-out */
export function weighOutOf(seen: Seen): readonly Line[] {
  const { batch: made, mix, oilMass: mass } = seen.working;
  if (!made || isProblem(made) || !mix || isProblem(mix) || !mass || isProblem(mass)) return [];
  return [...oilLines(seen, mix, mass), methanolLine(seen, made), lyeLine(seen, made)];
}

/** What the batch is expected to give and to hold, for those who ask. */
export function expectedOf(seen: Seen): readonly (readonly [string, string])[] {
  const { batch: made } = seen.working;
  if (!made || isProblem(made)) return [];
  const { mark } = seen;
  const assay = seen.figures.in("%", "assay") ?? hundred;
  const weighed = (pure: Gram): string =>
    `${amount(as("g", pure.times(hundred).div(assay)), mark)} g`;
  const kg = (mass: Kilogram): string => `${amount(mass, mark)} kg`;
  return [
    ["Of the lye, for the acid", weighed(made.pureForAcid)],
    ["Of the lye, for the reaction", weighed(made.pureForReaction)],
    ["Lye for a litre of oil", `${amount(made.catalystPerLitre, mark)} g`],
    ["Soap from the acid", kg(made.soap)],
    ["Water from the acid", kg(made.waterFromAcid)],
    ["Water from base and methanol", kg(made.waterFromBase)],
    ["Water in the lye, at most", kg(made.waterInLye)],
    ["Biodiesel, at most", kg(made.biodiesel)],
    ["Glycerol, at most", kg(made.glycerol)],
  ];
}

/**
 * The water of the whole batch in one sentence, beside the route, which knows the oil's alone.
 * @returns nothing while there is no weigh-out
 */
export function waterInAll(seen: Seen): string | undefined {
  const { batch: made, oilMass: mass } = seen.working;
  if (!made || isProblem(made) || !mass || isProblem(mass)) return undefined;
  const measured = seen.figures.in("%", "water");
  const found = waterOf(mass, measured, made);
  const kg = (part: Kilogram): string => amountTo(part, waterPlaces, seen.mark);
  const oil = measured ? `${kg(found.inOil)} kg in the oil` : "the oil’s own not measured";
  const percent = withMark(fixed(found.percent, 2), seen.mark);
  return `Water in all, at most ${kg(found.all)} kg or ${percent} % of the oil: ${oil}, ${kg(found.fromAcid)} kg from the acid, ${kg(found.fromBase)} kg from base and methanol, ${kg(found.inLye)} kg in the lye.`;
}

/** What the acid step takes, when the route asks for one. */
export function acidStepLines(seen: Seen): readonly Line[] {
  const { acidStep, base } = seen.working;
  if (!acidStep) return [];
  const { mark } = seen;
  const { amounts } = acidStep;
  const line = (what: string, figure: string, unit: string, also: string[] = []): Line => ({
    what,
    figure,
    unit,
    also,
  });
  return [
    line("Free fatty acid in the oil", amount(amounts.ffa, mark), "kg"),
    line("Methanol", amount(amounts.methanolVolume, mark), "L at 20 °C", [
      `${amount(amounts.methanol, mark)} kg`,
    ]),
    line("Sulfuric acid, as weighed", amount(amounts.sulfuricAcid, mark), "kg", [
      `${amount(amounts.sulfuricAcidVolume, mark)} mL`,
    ]),
    line(
      `${base.name} that would cancel all of that sulfuric acid, at most`,
      amount(amounts.baseToCancel, mark),
      "g",
      ["Do not add it now: after the acid step, titrate again."],
    ),
  ];
}
