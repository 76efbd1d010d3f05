/** What-if questions for tests, and their doses by an arithmetic of their own, in doubles. */
import { exact } from "../../../src/core/exact/exact";
import { quantity } from "../../../src/core/quantity/quantity";
import { amountUnitNamed } from "../../../src/core/quantity/units";
import { type Base, baseNamed } from "../../../src/core/reference/bases";
import { oilNamed } from "../../../src/core/reference/oils";
import { isProblem } from "../../../src/core/problem/problem";
import type { BookValue } from "../../../src/sheet/book";
import { type Doses, dosesOf } from "../../../src/workbook/what-if/doses";
import type { Compared, DoseColumn, WhatIfQuestion } from "../../../src/workbook/what-if/question";

export interface ColumnGiven {
  readonly acid?: number;
  readonly lot?: BookValue;
  readonly usedAllTheSame?: string;
  readonly base?: string;
  readonly assay?: number;
  readonly charge?: number;
}

function baseWanted(name: string): Base {
  const found = baseNamed(name);
  if (!found) throw new Error("no such base");
  return found;
}

export const column = (given: ColumnGiven): DoseColumn => ({
  acid: {
    value: quantity("mg KOH/g", String(given.acid ?? 5)),
    ...(given.lot === undefined ? {} : { lot: given.lot }),
    ...(given.usedAllTheSame === undefined ? {} : { usedAllTheSame: given.usedAllTheSame }),
  },
  base: baseWanted(given.base ?? "KOH"),
  assay: quantity("%", String(given.assay ?? 90)),
  charge: quantity("%", String(given.charge ?? 0.765)),
});

export interface QuestionGiven {
  readonly sizes?: readonly number[];
  readonly unit?: string;
  readonly oil?: string;
  readonly temperature?: number;
  readonly by?: Compared;
  readonly columns?: readonly ColumnGiven[];
  readonly limit?: number;
}

export function question(given: QuestionGiven = {}): WhatIfQuestion {
  const unit = amountUnitNamed(given.unit ?? "l");
  const oil = oilNamed(given.oil ?? "used cooking oil");
  if (!unit || !oil) throw new Error("no such unit or oil");
  return {
    sizes: (given.sizes ?? [100, 200]).map((size) => exact(size)),
    unit,
    oil,
    oilCell: oil.name,
    temperature: quantity("C", String(given.temperature ?? 20)),
    by: given.by ?? "acid",
    columns: (given.columns ?? [{ acid: 2 }, { acid: 5 }]).map(column),
    limitFfa: quantity("%", String(given.limit ?? 5)),
  };
}

export function doses(asked: WhatIfQuestion): Doses {
  const found = dosesOf(asked);
  if (isProblem(found)) throw new Error("no doses");
  return found;
}

/** g/mol, added up by hand from the conventional atomic weights. */
const molarMass = { KOH: 56.1053, NaOH: 39.99676928 } as const;

/**
 * By hand: moles of acid times the base's molar mass, and 10 g for each percent and kilogram, over
 * the assay.
 */
export const byHand = (
  kilograms: number,
  acid: number,
  base: keyof typeof molarMass = "KOH",
  assay = 90,
  charge = 0.765,
): number => (kilograms * ((acid / 56.1) * molarMass[base] + 10 * charge)) / (assay / 100);
