/** The constants that the plain formulas hold, with their sources, for those who get a copy. */
import type { Exact } from "../../core/exact/exact";
import { shown } from "../../core/exact/rounding";
import { atomicWeights } from "../../core/reference/atomic-weights";
import { bases } from "../../core/reference/bases";
import {
  acidValueDefinition,
  methanol,
  potassiumHydrogenPhthalate,
  sulfuricAcid,
  triolein,
} from "../../core/reference/compounds";
import { fattyAcids } from "../../core/reference/fatty-acids";
import {
  methanolDensity,
  sulfuricAcidDensity,
  titrantExpansion,
} from "../../core/reference/liquids";
import { densitySlopePerCelsius, oils } from "../../core/reference/oils";
import { type SourceId, sources } from "../../core/reference/sources";
import { functionNamed } from "../../functions/catalogue";

export interface ShownConstant {
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

interface Constant {
  readonly what: string;
  readonly value: string;
  readonly source: SourceId;
}

const line = (what: string, source: SourceId, value: Exact | string, unit: string): Constant => ({
  what,
  source,
  value: `${typeof value === "string" ? value : shown(value)} ${unit}`,
});

const grams = "g/mol";
/** What a name says of the figures that belong together. */
const listed = (pairs: readonly (readonly [string, Exact | string])[]): string =>
  pairs
    .map(([name, value]) => `${name} ${typeof value === "string" ? value : shown(value)}`)
    .join(", ");

const all: readonly Constant[] = [
  line("Atomic weights", "ciaaw", listed(Object.entries(atomicWeights)), grams),
  line(
    "Molar masses of the bases",
    "ciaaw",
    listed(bases.map(({ name, molarMass }) => [name, molarMass])),
    grams,
  ),
  line("Methanol, molar mass", "ciaaw", methanol, grams),
  line("Potassium hydrogen phthalate, molar mass", "ciaaw", potassiumHydrogenPhthalate, grams),
  line("Sulfuric acid, molar mass", "ciaaw", sulfuricAcid, grams),
  line("Triolein, molar mass", "ciaaw", triolein, grams),
  line("The acid value counts KOH as, by definition", "iso660", acidValueDefinition, grams),
  line(
    "Fatty acids that % FFA is reported as",
    "aocsCa5a",
    listed(fattyAcids.slice(0, 4).map(({ name, reportedMass }) => [name, reportedMass])),
    grams,
  ),
  line(
    "Density of oils",
    "codex",
    listed(
      oils.map(({ name, density, densityAt }) => [`${name} at ${shown(densityAt)} C`, density]),
    ),
    "kg/L",
  ),
  line(
    "Triglyceride of oils, molar mass",
    "codex",
    listed(oils.map(({ name, triglyceride }) => [name, triglyceride])),
    grams,
  ),
  line("Density of oil falls by", "noureddini", densitySlopePerCelsius, "kg/L for each C"),
  line("Density of methanol at 20 C", "handbook", methanolDensity, "kg/L"),
  line("Density of sulfuric acid, 96 to 98 %", "handbook", sulfuricAcidDensity, "kg/L"),
  line("Expansion of an alcoholic titrant", "en14104", titrantExpansion.alcohol, "per C"),
  line("Expansion of a titrant in water", "quam", titrantExpansion.water, "per C"),
];

/** Those of the sources that the functions rest on. */
export function constantsOf(ids: ReadonlySet<string>): ShownConstant[] {
  const used = new Set([...ids].flatMap((id) => functionNamed(id)?.sources ?? []));
  const usesAcids = used.has("iso660") || used.has("aocsCa5a");
  return all
    .filter(({ source }) => used.has(source) || (source === "aocsCa5a" && usesAcids))
    .map(({ what, value, source }) => ({ what, value, source: sources[source] }));
}
