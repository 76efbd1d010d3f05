/** The titrations on record, a row each: their readings, as far as they can be read. Reads only. */
import { exact } from "../../core/exact/exact";
import type { PastTitration } from "../../core/record/usual-scatter";
import {
  as,
  type Gram,
  type Millilitre,
  type MolePerLitre,
  type Quantity,
  type Unit,
} from "../../core/quantity/quantity";
import { limits, type Limits, misses } from "../../core/reference/limits";
import type { OnSample } from "../../core/replicates/at-mean-mass";
import { neutralisedWords } from "../../core/titration/neutralised";
import { type CellContent, type Fault, type Host, isFault } from "../../sheet/port";
import { readingHeadings, titrationsName, usualHeadings } from "../tables/titration-cells";
import { placeOf, rowsUnder, type Under } from "./headings";
import { readTable } from "./read";
import { withSharedBlanks } from "./shared-blanks";

export interface RecordedTitration extends PastTitration {
  /** As a spreadsheet counts days; undefined where it holds no date. */
  readonly day: number | undefined;
  /** As it stands there, without the spaces around it. */
  readonly lot: string;
  readonly molarity: MolePerLitre | undefined;
  readonly titreStep: Millilitre | undefined;
  /** mg KOH/g, as its cell shows it; undefined while it shows none. */
  readonly acidValue?: number | undefined;
}

export interface OnRecord {
  readonly rows: readonly RecordedTitration[];
  /** There are columns for the usual scatter, or will be: a table made by an earlier Titrebook has none. */
  readonly hasUsual: boolean;
}

/** "wrong": something stands there that is no figure. */
type Found<U extends Unit> = Quantity<U> | undefined | "wrong";

function figure<U extends Unit>(value: CellContent, limit: Limits<U>): Found<U> {
  if (value === "" || value === 0) return undefined;
  if (typeof value === "string" && value.trim() === "") return undefined;
  if (typeof value !== "number") return "wrong";
  const found = exact(value);
  return misses(found, limit) === undefined ? as(limit.unit, found) : "wrong";
}

/** Everything under some headings; undefined where a cell of them is wrong. */
function figures<U extends Unit>(
  under: Under,
  headings: readonly string[],
  limit: Limits<U>,
): (Quantity<U> | undefined)[] | undefined {
  const found: (Quantity<U> | undefined)[] = [];
  for (const heading of headings) {
    const value = figure(under(heading), limit);
    if (value === "wrong") return undefined;
    found.push(value);
  }
  return found;
}

const isNeutralised = (value: CellContent): boolean =>
  typeof value === "string" && neutralisedWords.includes(value.trim().toLowerCase());

/** Each titre with the mass in the same place; undefined where one stands without the other. */
function samplesOf(
  titres: readonly (Millilitre | undefined)[],
  masses: readonly (Gram | undefined)[],
): OnSample[] | undefined {
  const samples: OnSample[] = [];
  for (const [place, titre] of titres.entries()) {
    const mass = masses[place];
    if ((titre === undefined) !== (mass === undefined)) return undefined;
    if (titre !== undefined && mass !== undefined) samples.push([titre, mass]);
  }
  return samples;
}

const filled = <T>(values: readonly (T | undefined)[]): T[] =>
  values.filter((value) => value !== undefined);

const known = <U extends Unit>(found: Found<U>): Quantity<U> | undefined =>
  found === "wrong" ? undefined : found;

/** @returns undefined without a titre, and where a reading is no figure: what the row means is not known */
function titrationIn(under: Under): RecordedTitration | undefined {
  const titres = figures(under, readingHeadings.titres, limits.reading);
  const blank: Under = (heading) => {
    const value = under(heading);
    return isNeutralised(value) ? "" : value;
  };
  const blanks = figures(blank, readingHeadings.blanks, limits.reading);
  const masses = figures(under, readingHeadings.ownMasses, limits.sampleMass);
  if (!titres || !blanks || !masses || filled(titres).length === 0) return undefined;
  const isOwn = filled(masses).length > 1;
  const samples = isOwn ? samplesOf(titres, masses) : undefined;
  if (isOwn && samples === undefined) return undefined;
  const day = under("Date");
  const lot = under("Lot");
  const acidValue = under("Acid value mg KOH/g");
  return {
    titres: filled(titres),
    blanks: filled(blanks),
    samples,
    day: typeof day === "number" ? day : undefined,
    lot: typeof lot === "object" ? "" : String(lot).trim(),
    molarity: known(figure(under("Molarity mol/L"), limits.molarity)),
    titreStep: known(figure(under("Read to mL"), limits.step)),
    acidValue: typeof acidValue === "number" ? acidValue : undefined,
  };
}

/** Every row that can be read. No table: nothing on record yet, and the one to come has every column. */
export async function readTitrations(host: Host): Promise<OnRecord | Fault> {
  const found = await readTable(host, titrationsName);
  if (found === undefined) return { rows: [], hasUsual: true };
  if (isFault(found)) return found;
  const { headings } = found.table;
  const rows = rowsUnder(headings, found.values.slice(1)).flatMap((under) => {
    const read = titrationIn(under);
    return read ? [read] : [];
  });
  const hasUsual = usualHeadings.every((heading) => placeOf(heading, headings) !== undefined);
  return { rows: withSharedBlanks(rows), hasUsual };
}
