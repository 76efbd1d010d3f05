/**
 * Grams of lye as pure base: a charge as weighed less what its assay takes, a titrant by its own. Where
 * one lye of unknown assay is in burette and vessel, both as weighed, the assay cancels in the dose.
 */
import { assayCancels } from "../recognising/basis";
import type { Part } from "./part";
import type { Sources } from "./sources";

const pure: Part = () => "100";
const inUnderstand = "say it in Check columns";

/** A formula has to name its base: not known to be another is not enough. */
const isOneLye = ({ onlyBase, onlyTitrantBase }: Sources): boolean =>
  onlyBase !== undefined && onlyBase.name === onlyTitrantBase?.name;

/** The % of pure base in the titrant's grams, or what is lacking for it. */
export function strengthAssay(s: Sources): Part | string {
  switch (s.strengthBasis) {
    case "pure":
      return pure;
    case "as weighed":
      if (s.onlyBase && !isOneLye(s))
        return "the titrant's strength in mol/L or of pure lye: another lye is in the vessel";
      return s.assay ?? "the assay of the lye";
    default:
      return `whether the titrant's strength is of pure lye or as weighed: ${inUnderstand}`;
  }
}

/** The charge of pure base in its own unit, or what is lacking for it. */
export function pureCharge({ charge, assay }: Sources): Part | string {
  if (!charge) return "the base charge with its unit";
  const { part, basis } = charge;
  if (basis === "pure") return part;
  if (basis === undefined)
    return `whether the base charge is of pure lye or as weighed: ${inUnderstand}`;
  return assay ? (row) => `${part(row)}*${assay(row)}/100` : "the assay of the lye";
}

/** For a dose alone: 100 stands for an assay that cancels. */
export function forDose(s: Sources): Sources {
  const cancels =
    s.assay === undefined &&
    s.molarity === undefined &&
    s.titres !== undefined &&
    assayCancels(isOneLye(s), s.strengthBasis, s.charge?.basis);
  return cancels ? { ...s, assay: pure } : s;
}
