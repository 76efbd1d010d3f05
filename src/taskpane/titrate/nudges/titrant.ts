/** What is worth saying about a titrant. */
import { computed, type Exact, exact } from "../../../core/exact/exact";
import type { Base } from "../../../core/reference/bases";
import { phthalatePercent } from "../../../core/uncertainty/phthalate";
import type { TitrantHistory } from "../../../workbook/over-time/titrant-history";
import { digits, digitsKept, fixed } from "../../widgets/shown-number";
import {
  asMolarity,
  asPureGrams,
  asWeighedAt,
  baseOf,
  needsAssay,
  type Strength,
} from "../strength";
import { as } from "../../../core/quantity/quantity";
import { know, check, type Nudge, type Seen } from "./nudge";
import { aboutAge } from "./titrant-age";

/** Pure base for the reaction, g per litre of oil (common practice, no source). */
const usualCharge: Partial<Record<Base["name"], string>> = { KOH: "7", NaOH: "5" };

/** The strength in the other ways it is said, so that a slip shows. */
function inOtherWords({ draft, working: { strength } }: Seen): Nudge[] {
  if (strength === undefined) return [];
  const base = baseOf(draft);
  const grams = asPureGrams(strength.molarity, base);
  const upTo = strength.isAtMost ? "at most " : "";
  return [
    know(
      "strength",
      `That is ${upTo}${digitsKept(strength.molarity, 4)} mol/L, or ${digitsKept(grams)} g of pure ${base.name} in a litre (${digitsKept(grams.div(10))} % w/v).`,
    ),
  ];
}

/** The batch's own lye, assay unknown: what cancels, and what does not. */
function assayUnknown({ draft }: Seen, strength: Strength | undefined): Nudge[] {
  if (!needsAssay(draft.picked.way) || draft.picked.assay !== "same-lye") return [];
  const base = baseOf(draft);
  const perMillilitre = strength?.gramsPerLitre
    ? ` 1 mL on 1 mL of oil means ${digits(strength.gramsPerLitre)} g of it per litre.`
    : "";
  const charge = usualCharge[base.name];
  const example = charge
    ? `: ${charge} g/L pure is ${fixed(asWeighedAt(exact(charge), exact(90)), 1)} g/L of a 90 % lye and ${fixed(asWeighedAt(exact(charge), exact(85)), 1)} g/L of an 85 % one`
    : ", pure grams divided by it";
  return [
    know(
      "acid part",
      `Same lye, same lot: the acid part of the dose needs no assay, it cancels.${perMillilitre} Acid value and % FFA are shown as if it were pure: the true ones are lower.`,
    ),
    check("charge", `The base charge still needs the assay${example}.`),
  ];
}

/** Balances that are in use, while nobody has said how finely the own one shows, g. */
const usualBalances = ["0.01", "0.001"].map(exact);

/** What a check against KHP can reach, from the mass and the titre typed. */
function ofCheck({ draft, figures }: Seen): string {
  const mass = figures.in("g", "phthalateMass");
  const titre = figures.in("mL", "phthalateTitre");
  const titreStep = figures.in("mL", "titreStep");
  if (draft.picked.way !== "phthalate" || !mass || !titre || !titreStep) return "";
  const check = { mass: mass.toNumber(), titreStep: titreStep.toNumber(), titre: titre.toNumber() };
  const onBalance = (massStep: Exact): string => {
    const percent = computed(phthalatePercent({ ...check, massStep: massStep.toNumber() }));
    return `±${digits(percent, 2)} % on a balance that shows ${massStep.toString()} g`;
  };
  const own = figures.in("g", "massStep");
  const balances = own ? [own] : usualBalances;
  return ` With ${mass.toString()} g of KHP it is ${balances.map(onBalance).join(", ")}, at best.`;
}

function doubt(seen: Seen): Nudge[] {
  const { figures, working } = seen;
  if (working.strength === undefined || figures.judged("strengthPercent").kind !== "empty")
    return [];
  const words = `The ± does not count how sure the titrant is: fill in Accurate to ±.${ofCheck(seen)}`;
  return [know("doubt", words)];
}

export const aboutTitrant = (seen: Seen, histories: readonly TitrantHistory[] = []): Nudge[] => [
  ...inOtherWords(seen),
  ...assayUnknown(seen, seen.working.strength),
  ...aboutAge(seen, histories),
  ...doubt(seen),
];

/** The two things a bare 0.1 can mean, in grams, and how far apart they are: what the question shows. */
export const tenthMeans = (base: Base) => ({
  apart: digitsKept(asPureGrams(as("mol/L", exact("0.1")), base)),
  molarity: `0.1 mol/L: ${digitsKept(asPureGrams(as("mol/L", exact("0.1")), base))} g in a litre`,
  percent: `0.1 %: 1 g in a litre, ${digitsKept(asMolarity(as("g/L", exact(1)), base))} mol/L`,
});
