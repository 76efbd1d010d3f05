/** My bench as the first figures and picks of a titration, a batch, a table over sizes or a fuel. */
import { baseNamed } from "../../core/reference/bases";
import { amountUnitNamed, offeredUnits } from "../../core/quantity/units";
import { type BenchValues, chargeIsWords, chargeUnitWords } from "../../workbook/tables/bench";
import type { batch } from "../batch/batch";
import type { fuel } from "../fuel/fuel";
import type { BeginWith, SteppedTask } from "../stepped/entered";
import type { titration } from "../titrate/titration";
import type { Draft as WhatIfDraft } from "../what-if/draft";
import type { whatIf } from "../what-if/what-if";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { benchCharge } from "./charge";

/** What is said, and nothing for what is not: that stays as it was. */
const said = <All extends Readonly<Record<string, string | undefined>>>(
  all: All,
  how: (text: string) => string = (text) => text,
) =>
  Object.fromEntries(
    Object.entries(all).flatMap(([id, text]) => (text ? [[id, how(text)]] : [])),
  ) as { readonly [Id in keyof All]?: string };

const typedIn = <All extends Readonly<Record<string, string | undefined>>>(
  mark: DecimalMark,
  all: All,
) => said(all, (text) => withMark(text, mark));

const keyOf = <Key extends string>(words: Readonly<Record<Key, string>>, word?: string) =>
  (Object.keys(words) as Key[]).find((key) => words[key] === word);

const unitOf = (shown?: string) =>
  offeredUnits.find((name) => amountUnitNamed(name)?.shown === shown);

/** Of the lye of one base. */
const lyeOf = (values: BenchValues, named: string | undefined) => {
  const base = baseNamed(named ?? "")?.name;
  return base === undefined
    ? {}
    : { lot: values[`lot${base}`], assay: values[`assay${base}`], charge: values[`charge${base}`] };
};

const from = <Task extends SteppedTask>(
  typed: object,
  picked: object,
  words: object = {},
): BeginWith<Task> =>
  ({
    do: "begin-with",
    typed,
    picked,
    ...(Object.keys(words).length > 0 ? { words } : {}),
  }) as BeginWith<Task>;

export const titrationFrom = (values: BenchValues, mark: DecimalMark) =>
  from<typeof titration>(
    typedIn(mark, {
      molarity: values.molarity,
      strengthPercent: values.strengthPercent,
      titreStep: values.titreStep,
      massStep: values.massStep,
    }),
    said({
      base: values.titrantBase,
      // the bench asks for it in mol/L: no 0.1 of another kind is meant
      ...(values.molarity === undefined ? {} : { way: "molarity", oneTenth: "molarity" }),
    }),
  );

/** The lye of one base: its lot, its assay, and its charge in the unit and the meaning that hold for both. */
export function lyeFrom(values: BenchValues, mark: DecimalMark, base: string | undefined) {
  const { lot, assay, charge } = lyeOf(values, base);
  const unit = keyOf(chargeUnitWords, values.chargeUnit);
  const means = keyOf(chargeIsWords, values.chargeIs);
  // a charge that may be pure or as weighed is a tenth apart: it is asked for, not taken
  const isCharged = charge !== undefined && unit !== undefined && means !== undefined;
  return from<typeof batch>(
    typedIn(mark, {
      assay,
      chargePercent: isCharged && unit === "%" ? charge : undefined,
      chargeGrams: isCharged && unit === "g/L" ? charge : undefined,
    }),
    said({
      chargeUnit: isCharged ? unit : undefined,
      chargeIs: isCharged ? means : undefined,
    }),
    said({ lyeLot: lot }),
  );
}

export function batchFrom(values: BenchValues, mark: DecimalMark) {
  const lye = lyeFrom(values, mark, values.base);
  const unit = unitOf(values.unit);
  return from<typeof batch>(
    {
      ...lye.typed,
      ...typedIn(mark, {
        amount: unit === undefined ? undefined : values.amount,
        ratio: values.ratio,
        limit: values.limit,
      }),
    },
    { ...lye.picked, ...said({ base: values.base, unit }) },
    lye.words,
  );
}

/** What stays from batch to batch: the lye of the base in hand, methanol, limit; not how much oil. */
export function standingFrom(values: BenchValues, mark: DecimalMark, base: string) {
  const lye = lyeFrom(values, mark, base);
  return from<typeof batch>(
    { ...lye.typed, ...typedIn(mark, { ratio: values.ratio, limit: values.limit }) },
    lye.picked,
    lye.words,
  );
}

/** @param oil of the table: a charge by the litre is another percentage of each */
export function whatIfFrom(values: BenchValues, mark: DecimalMark, oil = "") {
  const { assay } = lyeOf(values, values.base);
  return from<typeof whatIf>(
    typedIn(mark, {
      assay,
      charge: benchCharge(values, values.base ?? "", oil)?.percent,
      limit: values.limit,
    }),
    said({ base: values.base, unit: unitOf(values.unit) }),
  );
}

/** The lye of the base in hand, and the limit; not what sizes are counted in. */
export const standingOf = (
  { picked: { base, oil } }: Pick<WhatIfDraft, "picked">,
  values: BenchValues,
  mark: DecimalMark,
) => whatIfFrom({ ...values, base, unit: "" }, mark, oil);

const fuelUnits = ["l", "us_gal", "uk_gal"] as const;

/** Burette, balance and titrant are those of the bench; oil in gallons is fuel in gallons. */
export function fuelFrom(values: BenchValues, mark: DecimalMark) {
  const unit = unitOf(values.unit);
  return from<typeof fuel>(
    typedIn(mark, {
      acidMolarity: values.molarity,
      acidPercent: values.strengthPercent,
      titreStep: values.titreStep,
      massStep: values.massStep,
    }),
    said({ base: values.base, madeIn: fuelUnits.find((each) => each === unit) }),
  );
}
