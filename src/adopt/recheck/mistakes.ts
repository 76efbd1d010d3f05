/**
 * The mistakes that are known by their arithmetic: each is a way of working that gives another figure
 * than the right way does from the same readings.
 */
export type MistakeId =
  | "acid-by-charge"
  | "acid-left-out"
  | "blank-not-subtracted"
  | "blank-added"
  | "blank-twice"
  | "percent-as-fraction"
  | "density-as-one"
  | "other-acid"
  | "assay-not-applied"
  | "assay-multiplied"
  | "other-base"
  | "percent-as-molarity"
  | "other-gallon"
  | "empty-as-zero"
  | "weighed-otherwise"
  | "not-recognised";

/** In a few words, for lists and filters. */
export const mistakeNames: Readonly<Record<MistakeId, string>> = {
  "acid-by-charge": "FFA fraction times base charge",
  "acid-left-out": "No lye for the acid at all",
  "blank-not-subtracted": "Blank not subtracted",
  "blank-added": "Blank added instead of subtracted",
  "blank-twice": "Blank subtracted twice",
  "percent-as-fraction": "Percent and fraction mixed up",
  "density-as-one": "Density taken as 1",
  "other-acid": "Another acid's molar mass",
  "assay-not-applied": "Assay of the lye not applied",
  "assay-multiplied": "Multiplied by the assay instead of divided",
  "other-base": "Another base's figure",
  "percent-as-molarity": "0.1 % taken for 0.1 mol/L",
  "other-gallon": "US and imperial gallon mixed up",
  "empty-as-zero": "Empty cells averaged as zero",
  "weighed-otherwise": "Another amount weighed than worked out",
  "not-recognised": "Differs, cause not recognised",
};

/** What went wrong and why it matters, in one sentence. */
export const mistakeSentences: Readonly<Record<MistakeId, string>> = {
  "acid-by-charge":
    "The lye for the acid is the FFA fraction times the base charge. It should be one mole for each mole of acid: 26 times as much where the charge is 7 g/L of KOH.",
  "acid-left-out": "The dose is the lye for the reaction alone: nothing is there for the acid.",
  "blank-not-subtracted": "What the solvent alone uses is counted as acid of the oil.",
  "blank-added": "The blank is added to the titre; it should be taken off.",
  "blank-twice": "The blank is taken off a titre from which it was taken off before.",
  "percent-as-fraction":
    "A figure in percent is used as a fraction, or the other way round: a hundredfold.",
  "density-as-one":
    "A volume of oil is taken for its mass: a litre of oil weighs about 0.92 kg, not 1 kg.",
  "other-acid":
    "The percentage is worked out with the molar mass of another acid than it is reported as.",
  "assay-not-applied":
    "The figure is for pure lye; what is weighed is less than pure, so more is needed.",
  "assay-multiplied":
    "The pure amount is multiplied by the assay. Dividing by it gives what to weigh.",
  "other-base":
    "The lye for the acid is counted in another base than is weighed out: 1 g of NaOH does what 1.40 g of KOH does.",
  "percent-as-molarity":
    "The titrant's strength in percent is used as mol/L: 0.1 % of KOH is 0.0178 mol/L, 0.1 % of NaOH 0.0250 mol/L.",
  "other-gallon": "An imperial gallon is 4.546 L, a US gallon 3.785 L: one is used for the other.",
  "empty-as-zero":
    "The sum of the titres is divided by the number of columns, though some were empty.",
  "weighed-otherwise": "What was weighed out is not what the sheet had worked out.",
  "not-recognised":
    "The figure does not follow from the row's readings, and none of the known mistakes gives it.",
};
