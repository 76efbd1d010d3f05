/** Everything that follows from what is typed so far: the mix's acid, the oil's mass, the weigh-out. */
import { asCharged } from "../../core/batch/as-charged";
import { type Batch, batch, volumeTemperature } from "../../core/batch/batch";
import { molarRatio } from "../../core/batch/conversions";
import { oilMass } from "../../core/batch/oil-mass";
import { type Pretreatment, pretreatment } from "../../core/batch/pretreatment";
import { pretreatmentAdvised } from "../../core/batch/route";
import { hundred } from "../../core/exact/exact";
import { isProblem, type Outcome } from "../../core/problem/problem";
import {
  as,
  type Gram,
  type Kilogram,
  type MoleRatio,
  type Percent,
} from "../../core/quantity/quantity";
import { type AmountUnit, amountUnits } from "../../core/quantity/units";
import { type Base, bases } from "../../core/reference/bases";
import { type Oil, oilNamed, oilNotNamed } from "../../core/reference/oils";
import { usual } from "../../core/reference/defaults";
import { doseHalfWidth } from "../../core/uncertainty/dose-interval";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import { asInCell } from "../fields/number-figures";
import type { Draft } from "./draft";
import type { Figures } from "./figures";
import { chosenLots, type Mix, mixOf } from "./mix";

export interface Working {
  readonly base: Base;
  readonly oil: Oil;
  readonly mix: Outcome<Mix> | undefined;
  readonly oilMass: Outcome<Kilogram> | undefined;
  /** % of the oil's mass, pure. */
  readonly charge: Outcome<Percent> | undefined;
  readonly ratio: Outcome<MoleRatio> | undefined;
  /** A problem above the limit: then there is no dose. */
  readonly batch: Outcome<Batch> | undefined;
  /** Half of the 95 % interval of the lye, g as weighed. */
  readonly halfWidth: Gram | undefined;
  readonly acidStep: AcidStep | undefined;
}

export interface AcidStep {
  readonly advised: "if you can" | "first";
  readonly amounts: Pretreatment;
}

export const unitOf = (draft: Draft): AmountUnit =>
  amountUnits.find(({ name }) => name === draft.picked.unit) as AmountUnit;

export const isVolume = (draft: Draft): boolean => unitOf(draft).measures === "volume";

/** The first lot's, as in the row's formula. */
const oilOf = (draft: Draft, recorded: readonly RecordedLot[]): Oil =>
  oilNamed(chosenLots(draft, recorded)[0]?.oil ?? "") ?? oilNotNamed;

function massOf(draft: Draft, figures: Figures, oil: Oil): Outcome<Kilogram> | undefined {
  const amount = figures.value("amount");
  if (amount === undefined || figures.judged("temperature").kind === "wrong") return undefined;
  const temperature = figures.in("C", "temperature");
  const found = oilMass(amount, unitOf(draft), oil, temperature);
  return isProblem(found) ? found : asInCell("kg", found);
}

function chargeOf(draft: Draft, figures: Figures, oil: Oil): Outcome<Percent> | undefined {
  const { chargeUnit: unit, chargeIs: is } = draft.picked;
  const assay = figures.in("%", "assay") ?? (is === "pure" ? as("%", hundred) : undefined);
  if (is === "" || assay === undefined) return undefined;
  const percent = figures.in("%", "chargePercent");
  const grams = figures.in("g/L", "chargeGrams");
  const at = volumeTemperature(oil);
  const found =
    unit === "%"
      ? percent && asCharged({ unit, amount: percent, is }, assay, oil, at)
      : grams && asCharged({ unit, amount: grams, is }, assay, oil, at);
  return found === undefined || isProblem(found) ? found : asInCell("%", found);
}

function ratioOf(draft: Draft, figures: Figures, oil: Oil): Outcome<MoleRatio> | undefined {
  if (draft.picked.methanolBy === "ratio") return figures.in("mol/mol", "ratio");
  const percent = figures.in("%", "volumePercent");
  const found = percent && molarRatio(percent, oil, volumeTemperature(oil));
  return found === undefined || isProblem(found) ? found : asInCell("mol/mol", found);
}

function acidStepOf(figures: Figures, made: Omit<Working, "acidStep">): AcidStep | undefined {
  const { mix, oilMass: mass, base } = made;
  const limit = figures.in("%", "limit");
  const assay = figures.in("%", "assay");
  if (mix === undefined || isProblem(mix) || mass === undefined || isProblem(mass))
    return undefined;
  if (limit === undefined || assay === undefined) return undefined;
  const advised = pretreatmentAdvised(mix.acidValue, limit);
  if (advised === "no" || figures.judged("acidAssay").kind === "wrong") return undefined;
  const acidAssay = figures.in("%", "acidAssay") ?? usual.acidAssay;
  return { advised, amounts: pretreatment(mass, mix.acidValue, base, assay, acidAssay) };
}

const settled = <T>(found: Outcome<T> | undefined): T | undefined =>
  isProblem(found) ? undefined : found;

export function workingOf(
  draft: Draft,
  figures: Figures,
  recorded: readonly RecordedLot[],
): Working {
  const base = bases.find(({ name }) => name === draft.picked.base) as Base;
  const oil = oilOf(draft, recorded);
  const mix = mixOf(draft, figures, recorded);
  const mass = massOf(draft, figures, oil);
  const charge = chargeOf(draft, figures, oil);
  const ratio = ratioOf(draft, figures, oil);
  const parts = { base, oil, mix, oilMass: mass, charge, ratio };
  const unready = { ...parts, batch: undefined, halfWidth: undefined };

  const [acid, kilograms, baseCharge, moles] = [mix, mass, charge, ratio].map(settled) as [
    Mix | undefined,
    Kilogram | undefined,
    Percent | undefined,
    MoleRatio | undefined,
  ];
  const assay = figures.in("%", "assay");
  const limitFfa = figures.in("%", "limit");
  const isReady = acid && kilograms && baseCharge && moles && assay && limitFfa;
  if (!isReady) return { ...unready, acidStep: acidStepOf(figures, unready) };
  const made = batch({
    oilMass: kilograms,
    acidValue: acid.acidValue,
    base,
    assay,
    baseCharge,
    molarRatio: moles,
    oil,
    limitFfa,
  });
  const acidPart = isProblem(made) ? undefined : made.pureForAcid.times(hundred).div(assay);
  const halfWidth =
    acidPart && acid.halfWidth !== undefined
      ? doseHalfWidth(as("g", acidPart), acid.halfWidth, acid.ffa.toNumber())
      : undefined;
  const done = { ...parts, batch: made, halfWidth };
  return { ...done, acidStep: acidStepOf(figures, done) };
}
