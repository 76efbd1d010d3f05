/** All the water of a batch: the route judges that of the oil alone. */
import { type Exact, hundred, zero } from "../exact/exact";
import { sum } from "../exact/lists";
import { as, type Kilogram, type Percent } from "../quantity/quantity";
import type { Batch } from "./batch";

const dry = as("kg", zero);

export interface Water {
  /** Zero where it was not measured. */
  readonly inOil: Kilogram;
  readonly fromAcid: Kilogram;
  readonly fromBase: Kilogram;
  readonly inLye: Kilogram;
  readonly inMethanol: Kilogram;
  readonly all: Kilogram;
  /** Of the oil's mass. */
  readonly percent: Percent;
}

/**
 * At most, since hydroxide that is not base is taken to be water.
 * @param measured percent of the oil's mass; left out: not measured
 * @param inMethanol kg of water in the methanol; left out: it is taken to be dry
 * @example 91.5 kg of 0.06 % water, AV 1.2903, KOH 90 %, 0.765 %: 0.4085 kg, 0.446 % of the oil
 */
export function waterOf(
  oilMass: Kilogram,
  measured: Percent | undefined,
  made: Pick<Batch, "waterFromAcid" | "waterFromBase" | "waterInLye">,
  inMethanol: Kilogram = dry,
): Water {
  const inOil = as("kg", oilMass.times(measured ?? zero).div(hundred));
  const { waterFromAcid: fromAcid, waterFromBase: fromBase, waterInLye: inLye } = made;
  const parts: readonly Exact[] = [inOil, fromAcid, fromBase, inLye, inMethanol];
  const all = as("kg", sum(parts));
  return {
    inOil,
    fromAcid,
    fromBase,
    inLye,
    inMethanol,
    all,
    percent: as("%", all.times(hundred).div(oilMass)),
  };
}
