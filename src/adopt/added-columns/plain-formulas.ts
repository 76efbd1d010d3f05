/**
 * The new columns in functions that every spreadsheet program has, short enough to be read in the cell.
 * They take for granted what our functions check: figures where figures belong, a titre above its
 * blank, one base and one kind of unit in the whole logbook.
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
import type { AddedId } from "./added";
import { forDose, pureCharge, strengthAssay } from "./lye-parts";
import type { Part } from "./part";
import type { Sources } from "./sources";
import type { Built } from "./titre-formulas";

const lack = (what: string): Built => ({ lacks: what });
const definition = acidValueDefinition.toString();

/** A word (neutralised) and an empty cell count as no blank. */
const blankText = (blanks: string, isOne: boolean): string =>
  isOne ? `N(${blanks})` : `IFERROR(AVERAGE(${blanks}),0)`;

const wordsIn = (titres: string): string => `SUMPRODUCT(--ISTEXT(${titres}))>0`;

/** An average passes words over: where some stand among the titres, such a row gives no figure. */
const average = (titres: string, hasWords: boolean): string =>
  hasWords ? `IF(${wordsIn(titres)},NA(),AVERAGE(${titres}))` : `AVERAGE(${titres})`;

function net({ titres, titresLack, blank, hasWordsInTitres }: Sources): Part | string {
  const { part, isOne, lacks, lacksPlain } = blank;
  if (!titres) return titresLack;
  if (lacks !== "" || lacksPlain !== "") return lacks === "" ? lacksPlain : lacks;
  return (row) =>
    `${average(titres(row), hasWordsInTitres)}${part ? `-${blankText(part(row), isOne)}` : ""}`;
}

function molarity(s: Sources): Part | string {
  const { molarity: known, strength, onlyTitrantBase: base } = s;
  if (known) return known;
  if (!strength || !base) return "the titrant's strength (mol/L, or g/L and one base)";
  const assay = strengthAssay(s);
  if (typeof assay === "string") return assay;
  return (row) => {
    const share = assay(row) === "100" ? "" : `*${assay(row)}/100`;
    return `${strength(row)}${share}/${base.molarMass.toString()}`;
  };
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

const mass = (s: Sources): Part | undefined => {
  const { mass: weighed, sampleVolume } = s;
  return weighed ?? (sampleVolume && ((row) => `(${sampleVolume(row)}*${density(s)(row)})`));
};

/** mL for each gram: of the corrected titre, or the mean of each titre's own with its own mass. */
function netPerGram(s: Sources, titre: Part): Part | undefined {
  const { titres, blank, pairs, hasWordsInTitres } = s;
  if (pairs.length === 0 || !titres) {
    const m = mass(s);
    return m && ((row) => `(${titre(row)})/${m(row)}`);
  }
  const { part, isOne } = blank;
  return (row) => {
    const less = part ? `-${blankText(part(row), isOne)}` : "";
    const each = pairs.map(
      (pair) => `IF(COUNT(${pair.titre(row)})=0,0,(${pair.titre(row)}${less})/${pair.mass(row)})`,
    );
    const mean = `(${each.join("+")})/COUNT(${titres(row)})`;
    return hasWordsInTitres ? `IF(${wordsIn(titres(row))},NA(),${mean})` : mean;
  };
}

function acidValue(s: Sources): Part | string {
  const titre = net(s);
  if (typeof titre !== "string") {
    const c = molarity(s);
    const perGram = netPerGram(s, titre);
    if (typeof c === "string") return c;
    if (!perGram) return s.massLack;
    return (row) => `${definition}*${c(row)}*${perGram(row)}`;
  }
  const { heldAcidValue, heldFfa } = s;
  if (s.titres) return titre;
  if (heldAcidValue) return heldAcidValue;
  return heldFfa
    ? (row) => `${heldFfa(row)}*10*${definition}/${oleic.reportedMass.toString()}`
    : titre;
}

function kilograms(s: Sources): Part | string {
  const { amount, kilogramsInOne } = s;
  // Not the figure counted in litres: each word stands with what one of it weighs.
  if (!amount || !kilogramsInOne) return "the amount of oil and its unit, written out in each row";
  return (row) => `${s.amountHeld?.(row) ?? ""}*${kilogramsInOne(row, density(s)(row))}`;
}

function pureReaction(s: Sources, oil: Part): Part | string {
  const part = pureCharge(s);
  if (typeof part === "string") return part;
  const per = s.charge?.per;
  if (per === "%") return (row) => `${oil(row)}*10*${part(row)}`;
  if (per === "g/kg") return (row) => `${oil(row)}*${part(row)}`;
  return (row) => `${oil(row)}/${density(s)(row)}*${part(row)}`;
}

function catalyst(given: Sources): Built {
  const s = forDose(given);
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
      return typeof titre === "string" ? lack(titre) : { formula: titre };
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
