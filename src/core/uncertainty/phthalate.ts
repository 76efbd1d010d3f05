/** How well a check against potassium hydrogen phthalate (KHP) can fix a titrant's strength. */
import { potassiumHydrogenPhthalate } from "../reference/compounds";
import type { BenchFigures } from "./bench";
import { combined } from "./combine";
import { fromLimits, fromTwoReadings, normal95 } from "./standard-uncertainty";

/** Of KHP sold for standards, percent (QUAM:2012, example A2: 0.05 %). */
export const phthalatePurityLimits = 0.05;

export interface PhthalateCheck {
  readonly massStep: number;
  /** g of KHP. */
  readonly mass: number;
  readonly titreStep: number;
  /** mL, less the blank. */
  readonly titre: number;
}

/**
 * The ± of the strength, 95 %, at best: balance, graduation (of titre and blank) and purity, no scatter.
 *   u^2 = massStep^2 / (6 m^2) + 2 titreStep^2 / (6 V^2) + (0.05 %)^2 / 3,  U = 1.96 u
 * @returns percent of the strength
 * @example phthalatePercent({ massStep: 0.01, mass: 0.51, titreStep: 0.05, titre: 25 }) // 1.59 %
 */
export function phthalatePercent(check: PhthalateCheck): number {
  const ofTitre = fromTwoReadings(check.titreStep) / check.titre;
  const parts = [fromTwoReadings(check.massStep) / check.mass, ofTitre, ofTitre];
  return (
    normal95 * combined([...parts.map((part) => 100 * part), fromLimits(phthalatePurityLimits)])
  );
}

/** mL of titrant that such a check is made to take (common practice, no source). */
export const checkTitre = 25;
/** g of KHP for that titre, for each mol/L. */
export const phthalatePerMolarity = potassiumHydrogenPhthalate
  .times(checkTitre)
  .div(1000)
  .toNumber();

/** The same on this bench's own balance and burette, with KHP for 25 mL. */
export const standardisedPercent = ({
  molarity,
  massStep,
  titreStep,
}: Pick<BenchFigures, "molarity" | "massStep" | "titreStep">): number =>
  phthalatePercent({
    massStep,
    titreStep,
    mass: phthalatePerMolarity * molarity,
    titre: checkTitre,
  });
