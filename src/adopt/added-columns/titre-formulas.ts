/** The new columns as our worksheet functions. */
import { usual } from "../../core/reference/defaults";
import { namespace } from "../../functions/names";
import type { RoleId } from "../recognising/roles";
import type { AddedId } from "./added";
import { forDose, pureCharge, strengthAssay } from "./lye-parts";
import type { Part } from "./part";
import type { Sources } from "./sources";

const call = (id: string, ...parts: readonly (string | undefined)[]): string => {
  const given = [...parts];
  while (given.length > 0 && given[given.length - 1] === undefined) given.pop();
  return `${namespace}.${id}(${given.map((part) => part ?? "").join(",")})`;
};

/** What a formula says, or what it lacks. */
export type Built = { readonly formula: Part } | { readonly lacks: string };

const lack = (what: string): Built => ({ lacks: what });
const formula = (part: Part): Built => ({ formula: part });

/** mol/L: as it stands, or from grams of the base in a litre; else what is lacking. */
function molarity(s: Sources): Part | string {
  const { molarity: known, strength, titrantBase } = s;
  if (known) return known;
  if (!strength || !titrantBase) return "the titrant's strength in mol/L, or in g/L with its base";
  const assay = strengthAssay(s);
  if (typeof assay === "string") return assay;
  return (row) => call("MOLARITY", strength(row), "1", titrantBase(row), assay(row));
}

const mass = ({ mass: weighed, sampleVolume, oil }: Sources): Part | undefined =>
  weighed ?? (sampleVolume && ((row) => call("SAMPLEGRAMS", sampleVolume(row), oil?.(row))));

function bench(s: Sources): ((row: number) => readonly (string | undefined)[]) | string {
  const { titres, blank } = s;
  const m = mass(s);
  if (!titres) return s.titresLack;
  if (blank.lacks !== "") return blank.lacks;
  const c = molarity(s);
  if (typeof c === "string") return c;
  if (!m) return s.massLack;
  return (row) => [titres(row), blank.part?.(row), c(row), m(row)];
}

function acidValue(s: Sources): Part | string {
  const of = bench(s);
  if (typeof of !== "string") return (row) => call("MEANACIDVALUE", ...of(row));
  const { heldAcidValue, heldFfa } = s;
  if (s.titres) return of;
  if (heldAcidValue) return heldAcidValue;
  return heldFfa ? (row) => call("ACIDVALUEFROMFFA", heldFfa(row)) : of;
}

const oilMass = ({ amount, unit, oil }: Sources): Part | string => {
  if (!amount || !unit) return "the amount of oil and its unit, written out in each row";
  return (row) => call("OILMASS", amount(row), unit(row), oil?.(row));
};

function chargePercent(s: Sources): Part | string {
  const part = pureCharge(s);
  const { oil } = s;
  if (typeof part === "string") return part;
  const per = s.charge?.per;
  if (per === "%") return part;
  if (per === "g/kg") return (row) => `${part(row)}/10`;
  return (row) => call("CHARGEPERCENT", part(row), "100", oil?.(row));
}

/** @param limit % FFA above which no dose is given; left out: the usual limit */
function catalyst(given: Sources, limit?: string): Built {
  const s = forDose(given);
  const kilograms = oilMass(s);
  const value = acidValue(s);
  const charge = chargePercent(s);
  const { base, assay } = s;
  if (typeof kilograms === "string") return lack(kilograms);
  if (typeof value === "string") return lack(value);
  if (!base) return lack("the base, written out in each row");
  if (!assay) return lack("the assay of the lye");
  if (typeof charge === "string") return lack(charge);
  return formula((row) =>
    call("CATALYST", kilograms(row), value(row), base(row), assay(row), charge(row), limit),
  );
}

function uncertainty(s: Sources): Built {
  const of = bench(s);
  const { titreStep, massStep, titrantDoubt } = s;
  if (typeof of === "string") return lack(of);
  if (!titreStep || !massStep)
    return lack("the smallest differences read on the burette and on the balance");
  return formula((row) =>
    call("FFAUNCERTAINTY", ...of(row), titreStep(row), massStep(row), titrantDoubt?.(row)),
  );
}

export function titreFormula(id: AddedId, s: Sources): Built {
  const { titres, blank } = s;
  const value = acidValue(s);
  switch (id) {
    case "correctedTitre":
      if (blank.lacks !== "") return lack(blank.lacks);
      return titres
        ? formula((row) => call("CORRECTED", titres(row), blank.part?.(row)))
        : lack(s.titresLack);
    case "acidValue":
      return typeof value === "string" ? lack(value) : formula(value);
    case "ffa":
      return typeof value === "string"
        ? lack(value)
        : formula((row) => call("FFAFROMACIDVALUE", value(row)));
    case "ffaUncertainty":
      return uncertainty(s);
    case "verdict": {
      const step = s.titreStep;
      return titres
        ? formula((row) => call("VERDICT", titres(row), step?.(row)))
        : lack(s.titresLack);
    }
    case "catalyst":
      return catalyst(s);
    case "methanol": {
      const kilograms = oilMass(s);
      if (typeof kilograms === "string") return lack(kilograms);
      if (typeof value === "string") return lack(value);
      return formula((row) =>
        call("METHANOL", kilograms(row), usual.molarRatio.toString(), value(row), s.oil?.(row)),
      );
    }
  }
}

/** Above any limit of a dose: the report of a re-check tells what a row should have held all the same. */
const noLimit = "30";

/** What a held result should be, as a formula of our functions; undefined where there is none for it. */
export function shouldHold(role: RoleId, s: Sources): Part | undefined {
  const of = (built: Built): Part | undefined => ("formula" in built ? built.formula : undefined);
  const { titres, base, assay } = s;
  const kilograms = oilMass(s);
  const value = acidValue(s);
  switch (role) {
    case "meanTitre":
      return titres && ((row) => `AVERAGE(${titres(row)})`);
    case "correctedTitre":
    case "acidValue":
    case "ffa":
      return of(titreFormula(role, s));
    case "oilMass":
      return typeof kilograms === "string" ? undefined : kilograms;
    case "acidDose":
      if (typeof kilograms === "string" || typeof value === "string" || !base || !assay)
        return undefined;
      return (row) => call("NEUTRALISER", kilograms(row), value(row), base(row), assay(row));
    case "catalyst":
    case "weighed":
      return of(catalyst(s, noLimit));
    default:
      return undefined;
  }
}
