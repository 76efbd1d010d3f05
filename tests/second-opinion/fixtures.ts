/** The committed second opinions: tables made by other programs (from-r.R, from-libreoffice.ts). */
import { readFileSync } from "node:fs";

export interface Table<Row extends unknown[]> {
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
}

export const fixtureFile = (name: string): URL => new URL(`fixtures/${name}.json`, import.meta.url);

export const fixture = <Row extends unknown[]>(name: string): Table<Row> =>
  JSON.parse(readFileSync(fixtureFile(name), "utf8")) as Table<Row>;

/** degrees of freedom, probability outside, t */
export type StudentRow = [freedom: number, outside: number, t: number];
/** degrees of freedom above and below the line, F, probability beyond it */
export type FisherRow = [first: number, second: number, f: number, beyond: number];
/** readings in the set, two-sided risk, critical value */
export type GrubbsRow = [count: number, alpha: number, critical: number];
export type DeviationRow = [readings: number[], mean: number, deviation: number];
