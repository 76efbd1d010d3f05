/** A batch as formula text: what BATCH and WATERBALANCE read alike, and the water that comes of it. */
import { exact, thousand } from "../../../core/exact/exact";
import { water } from "../../../core/reference/compounds";
import { definition, dose, pureForReaction } from "./doses";
import type { Reading } from "./reading";
import { figure, when } from "./text";
import { baseMass, baseOf } from "./words";

export function batchText(reading: Reading) {
  const oil = reading.figure("oilMass");
  const value = reading.figure("acidValue");
  const base = baseOf(reading);
  const mass = baseMass(base);
  const isMethoxide = base.pick("1 for a methoxide", (each) => exact(each.isMethoxide ? 1 : 0));
  const assay = reading.figure("assayPercent");
  const charge = reading.figure("baseCharge");
  const unlessMethoxide = (formula: string) => when(`${isMethoxide}=1`, "0", formula);
  const perMole = figure(water.div(thousand));
  const rest = (lye: string) => `${lye}*(100-${assay})/100/1000`;
  return {
    ...{ oil, value, mass, isMethoxide, assay, charge },
    /** Grams as weighed. */
    lye: dose(oil, value, mass, assay, charge),
    /** Kilograms in so much lye that are no base. */
    rest,
    /** Kilograms of water: of the acid, of base and methanol, and in so much lye at most. */
    water: (lye: string) => [
      unlessMethoxide(`${oil}*${value}/${definition}*${perMole}`),
      unlessMethoxide(`${pureForReaction(oil, charge)}*${perMole}/${mass}`),
      unlessMethoxide(rest(lye)),
    ],
  };
}
