/**
 * What the figures of a fuel mean, and what is to be done: wash again, dry, react again, titrate again.
 * Limits: core/reference/fuel-limits. How much a wash takes away is common practice, no source.
 */
import type { Exact } from "../exact/exact";
import { shown } from "../exact/rounding";
import { oilLeft, type TrialAnswer } from "../batch/went";
import { fuelMost } from "../reference/fuel-limits";
import type { AgainstLimit } from "./against-limit";

/** A wash with a third of the fuel's volume leaves about a third of its soap: common practice, no source. */
const leftByWash = 1 / 3;
/** More are not worth planning: something else is wrong. */
const mostWashes = 6;

/** Washes until soap and base of a fuel above the metal's limit come down to it. */
function washesNeeded(metal: Exact): number {
  const over = metal.div(fuelMost.metals).toNumber();
  // a part in a million, so that exactly a third over three times the limit is one wash
  return Math.max(1, Math.ceil(Math.log(over) / -Math.log(leftByWash) - 1e-6));
}

export interface FuelFound {
  readonly washed: "yes" | "no" | "";
  readonly acid: AgainstLimit["verdict"] | undefined;
  readonly metal: { readonly verdict: AgainstLimit["verdict"]; readonly found: Exact } | undefined;
  /** Base was found: phenolphthalein was pink at first. */
  readonly hasFreeBase: boolean;
  /** % of the mass. */
  readonly water: Exact | undefined;
  readonly trial: TrialAnswer | "";
}

export interface ToDo {
  readonly what: string;
  readonly why: string;
}

const wash = (metal: Exact, washed: FuelFound["washed"]): ToDo => {
  const count = washesNeeded(metal);
  if (count > mostWashes) {
    return {
      what: "Wash it, and titrate again after two.",
      why: "That is more soap than washes are planned for: let it settle longer first, and draw off what parts.",
    };
  }
  return {
    what: `Wash ${count === 1 ? "once" : `${String(count)} times`}${washed === "no" ? "" : " more"}.`,
    why: "This counts on each wash, with a third of the fuel’s volume of water, leaving a third of the soap (common practice, no source). Then titrate again.",
  };
};

/** In the order in which it is done; empty where nothing is known. */
export function toDo(found: FuelFound): readonly ToDo[] {
  const { washed, acid, metal, hasFreeBase, water, trial } = found;
  const done: ToDo[] = [];
  if (trial === "cloudy" || trial === oilLeft) {
    done.push({
      what:
        washed === "yes" ? "React it again, dried first." : "React it again, before it is washed.",
      why: "Cloudy in methanol, or oil at the bottom: oil that did not react. The trial is no measurement, and sees neither monoglyceride nor free glycerol (common practice, no source).",
    });
  }
  if (metal?.verdict === "above") done.push(wash(metal.found, washed));
  if (metal?.verdict === "cannot tell") {
    done.push({
      what: "Titrate the soap on a larger sample.",
      why: "It may be under or over the limit: 100 g of washed fuel or a finer burette would tell.",
    });
  }
  if (washed === "no" && acid !== undefined) {
    done.push({
      what: "Titrate the acid again once it is washed.",
      why: "Soap hides acid, and so does free base: the acid value of unwashed fuel judges nothing.",
    });
  } else if (acid === "above") {
    done.push({
      what: "Too much acid for fuel: blend it, or do not burn it in an engine that matters.",
      why: hasFreeBase
        ? "Free base beside acid cannot be: look for a slip in one of the two titrations."
        : "It comes from oil whose acid was not all neutralised, from soap that an acid wash split, or with age.",
    });
  } else if (acid === "cannot tell") {
    done.push({
      what: "Titrate the acid once more.",
      why: "It may be under or over the limit: one more titre or a finer burette would tell.",
    });
  }
  if (water?.gt(fuelMost.water)) {
    done.push({
      what: "Dry it.",
      why: `Water ${shown(water.toSignificantDigits(2))} % is above ${shown(fuelMost.water)} %: let it settle warm, draw off the water, and dry it until it is clear.`,
    });
  }
  return done;
}

/** Nothing stands against it in what was measured. */
export const isWell = (found: FuelFound): boolean =>
  found.acid === "below" && found.metal?.verdict === "below" && toDo(found).length === 0;

/** To be told of what was not measured. */
export const notMeasured = ({ acid, metal, water, trial }: FuelFound): readonly string[] => [
  ...(acid === undefined ? ["acid value"] : []),
  ...(metal === undefined ? ["soap and metal"] : []),
  ...(water === undefined ? ["water"] : []),
  ...(trial === "" ? ["the methanol trial"] : []),
];
