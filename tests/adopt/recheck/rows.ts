/**
 * A logbook of typed figures, worked out here in plain doubles: the second implementation the re-check
 * is held to. A row may be worked out in a wrong way.
 */
import { withBasis } from "../../../src/adopt/recognising/basis";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import type { Logbook } from "../../../src/adopt/recheck/recheck";
import { bareLogbook } from "./bare-logbook";

export interface Wrong {
  readonly zeros?: boolean;
  readonly blank?: 0 | -1;
  readonly acid?: number;
  readonly density?: number;
  readonly gallon?: number;
  readonly byCharge?: boolean;
  readonly noAcid?: boolean;
  readonly base?: number;
  readonly assay?: number;
  readonly scale?: number;
  /** Multiplies the total: for what no known mistake explains. */
  readonly factor?: number;
}

export interface Given {
  readonly titres: readonly (number | undefined)[];
  readonly blank: number;
  readonly mass: number;
  readonly molarity: number;
  readonly amount: number;
  readonly unit: "l" | "us_gal" | "uk_gal" | "kg";
  readonly assay: number;
  /** g/L, pure */
  readonly charge: number;
}

export const usual: Given = {
  titres: [5.2, 5.32, 5.25],
  blank: 0.25,
  mass: 10.4,
  molarity: 0.1,
  amount: 120,
  unit: "l",
  assay: 90,
  charge: 7,
};

const litresIn = { l: 1, us_gal: 3.785411784, uk_gal: 4.54609, kg: 1 / 0.915 };
export const round = (value: number, places: number): number => Number(value.toFixed(places));

/** Molar masses from the conventional atomic weights (facts of CIAAW 2021). */
const koh = 56.1053;

export interface WorkedRow {
  readonly mean: number;
  readonly net: number;
  readonly acidValue: number;
  readonly ffa: number;
  readonly kilograms: number;
  readonly acidDose: number;
  readonly total: number;
}

export function workRow(given: Given, wrong: Wrong = {}): WorkedRow {
  const filled = given.titres.filter((titre) => titre !== undefined);
  const mean =
    filled.reduce((sum, each) => sum + each, 0) /
    (wrong.zeros ? given.titres.length : filled.length);
  const net = mean - (wrong.blank ?? 1) * given.blank;
  const acidValue = (56.1 * given.molarity * net) / given.mass;
  const ffa = (given.molarity * net * (wrong.acid ?? 282)) / (10 * given.mass);
  const litres = given.amount * (wrong.gallon ?? litresIn[given.unit]);
  const kilograms = litres * (given.unit === "kg" ? 0.915 : (wrong.density ?? 0.915));
  const reaction = litres * given.charge;
  const right =
    ((kilograms * acidValue * (wrong.acid ? wrong.acid / 282 : 1)) / 56.1) *
    (wrong.base ?? koh) *
    (wrong.scale ?? 1);
  const acid = wrong.noAcid ? 0 : wrong.byCharge ? (ffa / 100) * reaction : right;
  const total = ((acid + reaction) / (wrong.assay ?? given.assay / 100)) * (wrong.factor ?? 1);
  return { mean, net, acidValue, ffa, kilograms, acidDose: acid, total };
}

type Held = Partial<Record<RoleId, LogbookValue>>;

const roles: readonly RoleId[] = [
  "lot",
  "titre",
  "titre",
  "titre",
  "blank",
  "meanTitre",
  "correctedTitre",
  "sampleMass",
  "molarity",
  "acidValue",
  "ffa",
  "oilAmount",
  "amountUnit",
  "oilMass",
  "base",
  "assay",
  "baseCharge",
  "acidDose",
  "catalyst",
];

const units: Partial<Record<RoleId, string>> = {
  titre: "mL",
  blank: "mL",
  meanTitre: "mL",
  correctedTitre: "mL",
  sampleMass: "g",
  molarity: "mol/L",
  acidValue: "mg KOH/g",
  ffa: "%",
  oilAmount: "L",
  oilMass: "kg",
  assay: "%",
  baseCharge: "g/L",
  acidDose: "g",
  catalyst: "g",
};

/** What a row holds: each figure worked out by its own wrong way, rounded as people do. */
export function rowOf(
  given: Given,
  steps: Partial<
    Record<"mean" | "net" | "acidValue" | "ffa" | "kilograms" | "acidDose" | "total", Wrong>
  > = {},
  all: Wrong = {},
  lot = "NQ-1",
): (LogbookValue | undefined)[] {
  const by = (step: keyof typeof steps): WorkedRow => workRow(given, steps[step] ?? all);
  const held: Held = {
    lot,
    blank: given.blank,
    meanTitre: round(by("mean").mean, 3),
    correctedTitre: round(by("net").net, 3),
    sampleMass: given.mass,
    molarity: given.molarity,
    acidValue: round(by("acidValue").acidValue, 2),
    ffa: round(by("ffa").ffa, 2),
    oilAmount: given.amount,
    amountUnit: given.unit,
    oilMass: round(by("kilograms").kilograms, 1),
    base: "KOH",
    assay: given.assay,
    baseCharge: given.charge,
    acidDose: round(by("acidDose").acidDose, 0),
    catalyst: round(by("total").total, 0),
  };
  let titre = -1;
  return roles.map((role) => {
    if (role !== "titre") return held[role];
    titre += 1;
    return given.titres[titre];
  });
}

/** Rows as a logbook whose maker says that the charge is pure; a role that is left out has no column. */
export function logbookOf(
  rows: readonly (readonly (LogbookValue | undefined)[])[],
  without: readonly RoleId[] = [],
  formulas: readonly (readonly [row: number, role: RoleId, formula: string])[] = [],
  formats: Partial<Record<RoleId, string>> = {},
): Logbook {
  const kept = roles
    .map((role, at) => ({ role, at }))
    .filter(({ role }) => !without.includes(role));
  const { mapping, cells } = bareLogbook(
    kept.map(({ role }) => [role, units[role]]),
    rows.map((row) => kept.map(({ at }) => row[at] ?? "")),
  );
  const formulaGrid = cells.formulas.map((row) => [...row]);
  for (const [row, role, formula] of formulas) {
    (formulaGrid[row + 1] as string[])[kept.findIndex((each) => each.role === role)] = formula;
  }
  const formatRow = kept.map(({ role }) => formats[role] ?? "General");
  return {
    mapping: withBasis(mapping, "baseCharge", "pure"),
    cells: { ...cells, formulas: formulaGrid, formats: cells.values.map(() => formatRow) },
  };
}

/** The letters of a role's column in a logbook of all roles. */
export const columnLetter = (role: RoleId, which = 0): string =>
  String.fromCharCode(65 + roles.indexOf(role) + which);
