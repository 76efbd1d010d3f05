/**
 * The new columns in functions that every spreadsheet program has, short enough to be read in the cell.
 * They take for granted what our functions check: figures where figures belong, a titre above its
 * blank, one mass for all titres, one base and one kind of unit in the whole logbook.
 */
import {
  acidValueDefinition,
  methanol as methanolMass,
  oleicAcid,
  triolein,
} from "../../core/reference/compounds";
import { oleic } from "../../core/reference/fatty-acids";
import { methanolDensity } from "../../core/reference/liquids";
import { oilNotNamed } from "../../core/reference/oils";
import { amountUnitNamed } from "../../core/quantity/units";
import type { AddedId } from "./added";
import type { Part, Sources } from "./sources";
import type { Built } from "./titre-formulas";

const lack = (what: string): Built => ({ lacks: what });
const definition = acidValueDefinition.toString();

/** A word (neutralised) and an empty cell count as no blank. */
const blankText = (blanks: string): string =>
  blanks.includes(":") ? `IFERROR(AVERAGE(${blanks}),0)` : `N(${blanks})`;

function net({ titres, blanks }: Sources): Part | undefined {
  if (!titres) return undefined;
  return (row) => `AVERAGE(${titres(row)})${blanks ? `-${blankText(blanks(row))}` : ""}`;
}

function molarity({ molarity: known, strength, onlyTitrantBase: base }: Sources): Part | undefined {
  if (known) return known;
  return strength && base && ((row) => `${strength(row)}/${base.molarMass.toString()}`);
}

/** A density as a figure or a cell with one; the name of an oil is not looked up. */
const density =
  ({ oil }: Sources): Part =>
  (row) => {
    const given = oil?.(row) ?? "";
    return given === "" || given.includes('"') || /IF\(/.test(given)
      ? oilNotNamed.density.toString()
      : given;
  };

function mass(s: Sources): Part | undefined {
  const { mass: weighed, sampleVolume } = s;
  if (weighed)
    return (row) => (weighed(row).includes(":") ? `AVERAGE(${weighed(row)})` : weighed(row));
  return sampleVolume && ((row) => `(${sampleVolume(row)}*${density(s)(row)})`);
}

function acidValue(s: Sources): Part | string {
  const titre = net(s);
  const c = molarity(s);
  const m = mass(s);
  if (titre && c && m) return (row) => `${definition}*${c(row)}*(${titre(row)})/${m(row)}`;
  if (s.titres)
    return c ? "how much oil was titrated" : "the titrant's strength (mol/L, or g/L and one base)";
  const { heldAcidValue, heldFfa } = s;
  if (heldAcidValue) return heldAcidValue;
  return heldFfa
    ? (row) => `${heldFfa(row)}*10*${definition}/${oleic.reportedMass.toString()}`
    : "the titres, in columns side by side";
}

/** Each unit of the column with what one of it weighs. */
function kilograms(s: Sources): Part | string {
  const { amount, unit } = s;
  if (!amount || !unit) return "the amount of oil with its unit";
  const inOne = (word: string, row: number): string => {
    const found = amountUnitNamed(word);
    if (!found) return "NA()";
    const factor = found.factor.toString();
    return found.measures === "mass" ? factor : `${factor}*${density(s)(row)}`;
  };
  return (row) => {
    const written = unit(row);
    const words = [...written.matchAll(/"([^"]*)"/g)].map(([, word = ""]) => word);
    const lone = /^"([^"]*)"$/.exec(written)?.[1];
    if (lone !== undefined) return `${amount(row)}*${inOne(lone, row)}`;
    const cell = /[A-Z]+\$?\d+\)*$/.exec(written)?.[0].replace(/\)/g, "") ?? written;
    // Their own words first, each with ours behind it; what is left is litres.
    const pairs = words
      .filter((_, at) => at % 2 === 0)
      .map((word, at) => [word, words[at * 2 + 1] ?? ""] as const);
    const choices = [...pairs, ["kg", "kg"], ["lb", "lb"]] as const;
    return `${amount(row)}*${choices.reduceRight((rest, [word, ours]) => `IF(${cell}="${word}",${inOne(ours, row)},${rest})`, inOne("l", row))}`;
  };
}

function pureReaction(s: Sources, oil: Part): Part | string {
  const { charge } = s;
  if (!charge) return "the base charge";
  const { part, per } = charge;
  if (per === "%") return (row) => `${oil(row)}*10*${part(row)}`;
  if (per === "g/kg") return (row) => `${oil(row)}*${part(row)}`;
  return (row) => `${oil(row)}/${density(s)(row)}*${part(row)}`;
}

function catalyst(s: Sources): Built {
  const oil = kilograms(s);
  const value = acidValue(s);
  const { assay, onlyBase: base } = s;
  if (typeof oil === "string") return lack(oil);
  if (typeof value === "string") return lack(value);
  if (!base) return lack("one base for all rows");
  if (!assay) return lack("the assay of the lye");
  const reaction = pureReaction(s, oil);
  if (typeof reaction === "string") return lack(reaction);
  return {
    formula: (row) =>
      `(${oil(row)}*(${value(row)})/${definition}*${base.molarMass.toString()}+${reaction(row)})/(${assay(row)}/100)`,
  };
}

function methanol(s: Sources): Built {
  const oil = kilograms(s);
  const value = acidValue(s);
  if (typeof oil === "string") return lack(oil);
  if (typeof value === "string") return lack(value);
  const acid = oleicAcid.toString();
  return {
    formula: (row) =>
      `${oil(row)}*(1-(${value(row)})*${acid}/(1000*${definition}))*6*${methanolMass.toString()}/${triolein.toString()}/${methanolDensity.toString()}`,
  };
}

export function plainFormula(id: AddedId, s: Sources): Built {
  const value = acidValue(s);
  const titre = net(s);
  switch (id) {
    case "correctedTitre":
      return titre ? { formula: titre } : lack("the titres, in columns side by side");
    case "acidValue":
      return typeof value === "string" ? lack(value) : { formula: value };
    case "ffa":
      return typeof value === "string"
        ? lack(value)
        : {
            formula: (row) => `(${value(row)})*${oleic.reportedMass.toString()}/(10*${definition})`,
          };
    case "catalyst":
      return catalyst(s);
    case "methanol":
      return methanol(s);
    default:
      return lack("the function: it has no short plain formula");
  }
}
