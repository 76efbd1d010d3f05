/** All mistakes that are known, in the order in which they are thought of: of two that give the same figure, the first. */
import { acidByCharge } from "./acid-by-charge";
import { acidLeftOut } from "./acid-left-out";
import { acidValueAsPercent } from "./acid-value-as-percent";
import { assayMultiplied } from "./assay-multiplied";
import { assayNotApplied } from "./assay-not-applied";
import { blankAdded } from "./blank-added";
import { blankNotSubtracted } from "./blank-not-subtracted";
import { blankTwice } from "./blank-twice";
import { copiedFromAbove } from "./copied-from-above";
import { decimalSlip } from "./decimal-slip";
import { densityAsOne } from "./density-as-one";
import { emptyAsZero } from "./empty-as-zero";
import { kilogramsAsLitres } from "./kilograms-as-litres";
import { litresForGallons } from "./litres-for-gallons";
import { notRecognised } from "./not-recognised";
import { otherAcid } from "./other-acid";
import { otherBase } from "./other-base";
import { otherGallon } from "./other-gallon";
import { otherLot } from "./other-lot";
import { percentAsFraction } from "./percent-as-fraction";
import { percentAsMolarity } from "./percent-as-molarity";
import { slipOfAddition } from "./slip-of-addition";
import { titreLeftOut } from "./titre-left-out";
import { weighedOtherwise } from "./weighed-otherwise";
import type { Mistake } from "./mistake";

const all = [
  acidByCharge,
  assayNotApplied,
  assayMultiplied,
  otherBase,
  densityAsOne,
  otherGallon,
  litresForGallons,
  kilogramsAsLitres,
  acidLeftOut,
  percentAsFraction,
  acidValueAsPercent,
  emptyAsZero,
  titreLeftOut,
  blankNotSubtracted,
  blankAdded,
  blankTwice,
  percentAsMolarity,
  otherAcid,
  otherLot,
  copiedFromAbove,
  decimalSlip,
  slipOfAddition,
  weighedOtherwise,
  notRecognised,
] as const;

export type MistakeId = (typeof all)[number]["id"];

export const mistakes: readonly Mistake<MistakeId>[] = all;

const byId = new Map(mistakes.map((each) => [each.id, each]));
export const mistakeOf = (id: MistakeId): Mistake<MistakeId> => byId.get(id) ?? notRecognised;
