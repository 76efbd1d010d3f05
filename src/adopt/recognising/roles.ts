/**
 * What a column of a logbook can be. For each role: how it is called in a sentence, which units it may
 * be in, what kind of thing its cells hold and between which figures they usually lie.
 */
import { isBare, measures } from "../../core/quantity/measures";
import { type AmountUnit, amountUnits } from "../../core/quantity/units";

export type RoleId = (typeof list)[number]["id"];

export type Holds = "date" | "text" | "number" | "any";

export interface Role {
  readonly id: string;
  /** In a sentence: "the blank". */
  readonly words: string;
  /** Units it may be in, the usual first. Empty: none. */
  readonly units: readonly string[];
  readonly holds: Holds;
  /** Figures in that unit usually lie here. */
  readonly usual?: readonly [number, number];
  /** Several columns of one table may be it. */
  readonly repeats?: boolean;
  /** It is worked out, not read or typed. */
  readonly isResult?: boolean;
  /** All of a table's rows usually hold the same few figures. */
  readonly isSteady?: boolean;
}

const named = (measured: AmountUnit["measures"]): string[] =>
  amountUnits.filter(({ measures }) => measures === measured).map(({ inHeadings }) => inHeadings);
/** As further measures have it: "fl oz", "drop". */
const further = (measured: "volume" | "mass"): string[] =>
  measures
    .filter((each) => each.measures === measured && !named(measured).includes(each.name))
    .map(({ name }) => name);
const bare = ["gal", "quart", "pint", "fl oz"].filter(isBare);
const containers = ["cup"];
const volumes = [...named("volume"), ...bare, ...further("volume"), ...containers];
const masses = ["kg", ...named("mass").filter((each) => each !== "kg"), "oz"];
const spoons = ["cup", "tablespoon", "teaspoon"] as const;
const doses = ["g", "kg", "lb", "oz", "grain", ...spoons] as const;
const drops = ["mL", "drop"] as const;
const small = ["mL", "fl oz", "US fl oz", "imp fl oz", "drop", ...spoons] as const;

// prettier-ignore
const list = [
  { id: "date", words: "date", units: [], holds: "date" },
  { id: "lot", words: "lot of oil", units: [], holds: "any" },
  { id: "batch", words: "batch", units: [], holds: "any" },
  { id: "oil", words: "kind of oil", units: [], holds: "text" },
  { id: "operator", words: "operator", units: [], holds: "text" },
  { id: "stage", words: "stage of the oil", units: [], holds: "text" },
  { id: "titrantBase", words: "base in the burette", units: [], holds: "text" },
  { id: "indicator", words: "indicator", units: [], holds: "text" },
  { id: "molarity", words: "titrant strength, mol/L", units: ["mol/L"], holds: "number", usual: [0.005, 1.1], isSteady: true },
  { id: "strength", words: "titrant strength, g/L", units: ["g/L", "% w/v"], holds: "number", usual: [0.09, 60], isSteady: true },
  { id: "titre", words: "titre", units: drops, holds: "number", usual: [0.1, 60], repeats: true },
  { id: "blank", words: "blank", units: drops, holds: "number", usual: [0, 1.5], repeats: true },
  { id: "meanTitre", words: "mean titre", units: drops, holds: "number", usual: [0.1, 60], isResult: true },
  { id: "correctedTitre", words: "corrected titre", units: drops, holds: "number", usual: [0.05, 60], isResult: true },
  { id: "sampleMass", words: "sample mass", units: ["g", "grain", "oz"], holds: "number", usual: [0.4, 60], repeats: true },
  { id: "sampleVolume", words: "sample volume", units: small, holds: "number", usual: [0.5, 25], repeats: true },
  { id: "acidValue", words: "acid value", units: ["mg KOH/g"], holds: "number", usual: [0.1, 60], isResult: true },
  { id: "ffa", words: "% FFA", units: ["%", "fraction"], holds: "number", usual: [0.05, 30], isResult: true },
  { id: "ffaUncertainty", words: "uncertainty of % FFA", units: ["%"], holds: "number", usual: [0.001, 2], isResult: true },
  { id: "verdict", words: "verdict on the replicates", units: [], holds: "any", isResult: true },
  { id: "oilAmount", words: "amount of oil", units: [...volumes, ...masses], holds: "number", usual: [1, 5000] },
  { id: "amountUnit", words: "unit of the amount", units: [], holds: "text", isSteady: true },
  { id: "oilMass", words: "mass of oil, kg", units: ["kg"], holds: "number", usual: [1, 5000], isResult: true },
  { id: "density", words: "density of the oil", units: ["kg/L"], holds: "number", usual: [0.85, 1], isSteady: true },
  { id: "temperature", words: "temperature", units: ["C"], holds: "number", usual: [5, 90] },
  { id: "base", words: "base used as catalyst", units: [], holds: "text", isSteady: true },
  { id: "lyeLot", words: "lot of lye", units: [], holds: "any" },
  { id: "assay", words: "lye purity (assay)", units: ["%", "fraction"], holds: "number", usual: [70, 100], isSteady: true },
  { id: "baseCharge", words: "base charge", units: ["%", "g/L", "g/kg"], holds: "number", usual: [0.2, 15], isSteady: true },
  { id: "acidDose", words: "lye for the acid", units: [...doses, "g/L", "g/kg"], holds: "number", usual: [0.01, 5000], isResult: true },
  { id: "reactionDose", words: "lye for the reaction", units: [...doses, "g/L", "g/kg"], holds: "number", usual: [1, 20000], isResult: true },
  { id: "catalyst", words: "lye dose, worked out", units: [...doses], holds: "number", usual: [1, 50000], isResult: true },
  { id: "catalystRate", words: "lye dose for a litre or kilogram", units: ["g/L", "g/kg", "%"], holds: "number", usual: [0.2, 60], isResult: true },
  { id: "methanol", words: "methanol", units: [...volumes, ...masses], holds: "number", usual: [0.2, 2000], isResult: true },
  { id: "weighed", words: "lye really weighed", units: [...doses], holds: "number", usual: [1, 50000] },
  { id: "waterContent", words: "water in the oil", units: ["%", "ppm", "mg/kg"], holds: "number", usual: [0.005, 3] },
  { id: "dish", words: "empty dish for water, g", units: ["g"], holds: "number", usual: [1, 400] },
  { id: "dishBefore", words: "dish with oil before heating, g", units: ["g"], holds: "number", usual: [2, 600] },
  { id: "dishAfter", words: "dish with oil after heating, g", units: ["g"], holds: "number", usual: [2, 600] },
  { id: "litresMade", words: "biodiesel made", units: [...volumes, ...masses], holds: "number", usual: [1, 5000] },
  { id: "route", words: "route", units: [], holds: "text", isResult: true },
  { id: "note", words: "note", units: [], holds: "text", repeats: true },
  { id: "titreStep", words: "smallest difference read, mL", units: ["mL"], holds: "number", usual: [0.001, 1], isSteady: true },
  { id: "massStep", words: "smallest difference weighed, g", units: ["g"], holds: "number", usual: [0.0001, 1], isSteady: true },
  { id: "titrantDoubt", words: "titrant strength, ± %", units: ["%"], holds: "number", usual: [0.01, 20], isSteady: true },
  { id: "number", words: "row number", units: [], holds: "number", usual: [1, 100000] },
  { id: "other", words: "something else", units: [], holds: "any", repeats: true },
] as const satisfies readonly Role[];

export const roles: readonly (Role & { readonly id: RoleId })[] = list;

const byId = new Map<string, Role & { readonly id: RoleId }>(roles.map((role) => [role.id, role]));

export const roleOf = (id: RoleId): Role & { readonly id: RoleId } =>
  byId.get(id) ?? (byId.get("other") as Role & { readonly id: RoleId });

export const isRoleId = (word: string): word is RoleId => byId.has(word);
