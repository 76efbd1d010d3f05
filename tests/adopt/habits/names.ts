/** What a mistake that was planted is rightly called, by hand. */
import type { MistakeId } from "../../../src/adopt/recheck/mistakes/all";
import type { Planted } from "./mistakes";

export const rightName: Readonly<Record<Planted, MistakeId>> = {
  "trade rule": "acid-by-charge",
  "blank not subtracted": "blank-not-subtracted",
  "blank twice": "blank-twice",
  "blank added": "blank-added",
  "assay forgotten": "assay-not-applied",
  "assay multiplied": "assay-multiplied",
  "factor of the other base": "other-base",
  "litres as kilograms": "density-as-one",
  "kilograms as litres": "kilograms-as-litres",
  "1 mL as 1 g": "density-as-one",
  "slip by ten": "decimal-slip",
  // a mean of figures that stand nowhere together has no name
  "mean of wrong titres": "not-recognised",
  "one titre left out": "titre-left-out",
  "acid value as percent": "acid-value-as-percent",
  "stale copied dose": "copied-from-above",
  "decimal slip": "decimal-slip",
  "other gallon": "other-gallon",
  "nothing for the acid": "acid-left-out",
  "percent as fraction": "percent-as-fraction",
  "percent as molarity": "percent-as-molarity",
  "another lot's acid": "other-lot",
  "other amount weighed": "weighed-otherwise",
};
