/** A record of earlier titrations on a simulated bench, and the usual scatter that the core takes from it. */
import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import type { UsualScatter } from "../../core/record/pooled-scatter";
import { usualFreedom, usualScatter } from "../../core/record/usual-scatter";
import { anyPlace, type Random, readDifference } from "./random";

export interface RecordPlan {
  /** Titrations of three titres each. */
  readonly titrations: number;
  /** Standard deviation of one titration, mL. */
  readonly scatter: number;
  /** Graduation, mL. */
  readonly step: number;
}

const titresEach = 3;
/** Each lot of oil titrates to something else, mL. */
const anyTitre = (random: Random): number => 1 + 4 * random.uniform();
const decimals = 4;

/** @returns what USUALSCATTER and USUALFREEDOM say of such a record */
export function recordOf({ titrations, scatter, step }: RecordPlan, random: Random): UsualScatter {
  const record = Array.from({ length: titrations }, () => {
    const titre = anyTitre(random);
    return {
      titres: Array.from({ length: titresEach }, () => {
        const delivered = titre + scatter * random.normal();
        const read = readDifference(delivered, step, anyPlace(step, random));
        return as("mL", exact(read.toFixed(decimals)));
      }),
      blanks: [],
      samples: undefined,
    };
  });
  const found = usualScatter(record, as("mL", exact(step)));
  const freedom = usualFreedom(record);
  if (isProblem(found) || isProblem(freedom)) throw new Error("a record without repeats");
  return { scatter: found, freedom };
}
