/** The formulas of a row of `Fuel`, by its cells. The pane asks the same functions with the same figures. */
import { shown } from "../../core/exact/rounding";
import { fuelMost } from "../../core/reference/fuel-limits";
import { cellOf, cellsOf } from "./column";

export const fuelName = "Fuel";
export const one = (heading: string): string => cellOf(fuelName, heading);

export const acidTitreHeadings = [1, 2, 3].map((index) => `Acid titre ${String(index)} mL`);
const acidTitres = cellsOf(fuelName, "Acid titre 1 mL", "Acid titre 3 mL");
const acid = `${acidTitres},${one("Acid blank mL")},${one("Acid mol/L")},${one("Acid mass g")}`;

/** A verdict only where both figures are there. */
const against = (value: string, doubt: string, limit: string): string =>
  `IF(ISNUMBER(${value}),IF(ISNUMBER(${doubt}),TITRE.AGAINSTLIMIT(${value},${doubt},${limit}),""),"")`;

export const acidValue = `TITRE.MEANACIDVALUE(${acid})`;
export const acidDoubt = `TITRE.ACIDVALUEUNCERTAINTY(${acid},${one("Acid read to mL")},${one("Weighed to g")},${one("Acid titrant ± %")})`;
export const acidVerdict = against(
  one("Acid value mg KOH/g"),
  one("± acid value"),
  shown(fuelMost.acid),
);

const flask = (titre: string, blank = one("Soap blank mL")): string =>
  `${titre},${blank},${one("HCl mol/L")},${one("Soap mass g")},${one("Base")}`;
export const soap = `TITRE.FUELSOAP(${flask(one("Soap titre mL"))})`;
/** Its blank is none: a solvent that was colourless with phenolphthalein took nothing so far. */
export const freeBase = `IF(${one("Free base titre mL")}="","",TITRE.FUELCATALYST(${flask(one("Free base titre mL"), '"neutralised"')}))`;
const found = `IF(${one("Free base mg/kg")}="","none",${one("Free base mg/kg")})`;
export const metal = `TITRE.FUELMETAL(${one("Soap mg/kg")},${one("Base")},${found})`;

/** Two readings of the burette for the soap, two more where base was titrated: rectangular, each. */
export const readingPart = 1.96;
const readings = `IF(${one("Free base titre mL")}="",2,4)`;
const inMillilitres = `${String(readingPart)}*${one("HCl read to mL")}*(${readings}/6)^0.5`;
const byReading = `TITRE.FUELMETAL(TITRE.FUELSOAP(${flask(inMillilitres, '"neutralised"')}),${one("Base")})`;
const byTitrant = `${String(readingPart)}*${one("Metal mg/kg")}*${one("HCl ± %")}/100/3^0.5`;
/** One titration shows no scatter: reading and titrant alone are counted. */
export const metalDoubt = `(${byReading}^2+(${byTitrant})^2)^0.5`;
export const metalVerdict = against(one("Metal mg/kg"), one("± metal"), shown(fuelMost.metals));
