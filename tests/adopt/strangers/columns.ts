/** The columns of one maker's logbook, each under a heading as makers of that language write it. */
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { Chance } from "../habits/chance";
import type { Maker } from "./figures";
import type { Language, Meaning } from "./words/role-words";

export interface Column {
  readonly meaning: Meaning;
  /** Which of several titres. */
  readonly which: number;
  readonly heading: string;
  /** As the maker spells it; "" for none. */
  readonly unitWord: string;
  readonly unit: string | undefined;
  /** What a colleague may rightly take it for. */
  readonly roles: readonly RoleId[];
  /** Its heading was replaced by a word that means nothing. */
  readonly isNonsense?: true;
}

const noRole: readonly Meaning[] = [
  "rough",
  "target",
  "price",
  "time",
  "colour",
  "glycerol",
  "soap",
  "running total",
];

function rolesOf(meaning: Meaning, unit: string | undefined): readonly RoleId[] {
  if (noRole.includes(meaning)) return ["other"];
  const role = meaning as RoleId;
  if (role === "oilAmount" && unit === "kg") return ["oilAmount", "oilMass"];
  if (role === "oilMass") return ["oilMass", "oilAmount"];
  // nothing is worked out from these
  if (role === "stage" || role === "indicator" || role === "lyeLot" || role === "route")
    return [role, "other"];
  return [role];
}

const fixed: Readonly<Partial<Record<Meaning, string>>> = {
  titre: "mL",
  blank: "mL",
  meanTitre: "mL",
  correctedTitre: "mL",
  rough: "mL",
  sampleMass: "g",
  sampleVolume: "mL",
  acidValue: "mg KOH/g",
  ffa: "%",
  target: "%",
  oilMass: "kg",
  density: "kg/L",
  temperature: "C",
  assay: "%",
  catalystRate: "g/L",
};

function unitOf(meaning: Meaning, maker: Maker): string | undefined {
  switch (meaning) {
    case "oilAmount":
      return maker.oilUnit;
    case "litresMade":
      return maker.oilUnit;
    case "methanol":
      return maker.oilUnit.includes("gal") ? maker.oilUnit : "L";
    case "glycerol":
      return "L";
    case "baseCharge":
      return maker.chargeUnit;
    case "acidDose":
    case "reactionDose":
    case "catalyst":
    case "weighed":
      return maker.doseUnit;
    default:
      return fixed[meaning];
  }
}

/** What a maker seldom leaves out, since two columns would else look alike. */
const needsUnit: readonly Meaning[] = [
  "sampleMass",
  "sampleVolume",
  "oilAmount",
  "oilMass",
  "baseCharge",
  "acidDose",
  "reactionDose",
  "catalyst",
  "catalystRate",
  "weighed",
];

export type UnitStyle = "brackets" | "after" | "comma" | "square" | "none";

export const withUnit = (heading: string, unit: string, style: UnitStyle): string =>
  unit === "" || style === "none"
    ? heading
    : style === "brackets"
      ? `${heading} (${unit})`
      : style === "square"
        ? `${heading} [${unit}]`
        : style === "comma"
          ? `${heading}, ${unit}`
          : `${heading} ${unit}`;

const split = (words: string): string[] => words.split("|");

export function columnsOf(
  chance: Chance,
  language: Language,
  maker: Maker,
  meanings: readonly Meaning[],
  unitShare: number,
): Column[] {
  const units = new Map<string, string>();
  const spelled = (unit: string): string => {
    if (!units.has(unit)) units.set(unit, chance.of(split(language.units[unit] ?? unit)));
    return units.get(unit) ?? unit;
  };
  const used = new Set<string>();
  const drawn = (meaning: Meaning): string | undefined => {
    const words = split(language.headings[meaning] ?? "").filter(
      (each) => each !== "" && !used.has(each),
    );
    if (words.length === 0) return undefined;
    const word = chance.of(words);
    used.add(word);
    return word;
  };
  return meanings.flatMap((meaning): Column[] => {
    if (
      (meaning === "sampleMass" || meaning === "sampleVolume") &&
      meaning !== (maker.sampleBy === "g" ? "sampleMass" : "sampleVolume")
    )
      return [];
    if (meaning === "molarity" && maker.strengthBy !== "mol/L") return [];
    if (meaning === "strength" && maker.strengthBy !== "g/L") return [];
    const word = drawn(meaning);
    if (word === undefined) return [];
    const hasOwn =
      word.endsWith("~") ||
      meaning === "molarity" ||
      meaning === "strength" ||
      meaning === "amountUnit";
    const unit = unitOf(meaning, maker);
    const isShown =
      unit !== undefined && !hasOwn && (needsUnit.includes(meaning) || chance.yes(unitShare));
    const plain = word.replace(/~$/, "");
    const count = meaning === "titre" ? maker.replicates : 1;
    return Array.from({ length: count }, (_, which) => ({
      meaning,
      which,
      heading:
        count === 1
          ? plain
              .replace(/\s*#(?=\s|$)/, meaning === "titre" ? "" : "#")
              .replace(/#(?=$)/, meaning === "titre" ? "" : "#")
              .trim()
          : plain.replace("#", String(which + 1)),
      unitWord: isShown ? spelled(unit) : "",
      unit: isShown ? unit : undefined,
      roles: rolesOf(meaning, unit),
    }));
  });
}
