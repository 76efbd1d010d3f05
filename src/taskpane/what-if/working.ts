/** What follows from the fields: the question for the table, or what is still wanted for it. */
import { densityAt } from "../../core/batch/density";
import { halfSolidWords } from "../../core/batch/half-solid";
import type { Exact } from "../../core/exact/exact";
import { as } from "../../core/quantity/quantity";
import { amountUnitNamed } from "../../core/quantity/units";
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import {
  type Oil,
  oilNamed,
  oilNotNamed,
  oilOfDensity,
  usualTemperature,
} from "../../core/reference/oils";
import type { WhatIfQuestion } from "../../workbook/what-if/question";
import { columnsOf } from "./columns";
import { mostColumns } from "./fields";
import { sizesOf } from "./sizes";
import { temperatureWords } from "../fields/fahrenheit";
import { type Bench, needed, optional, type Want, type Wanting } from "./wanting";

export interface Working {
  /** Undefined while anything is wanted. */
  readonly question: WhatIfQuestion | undefined;
  readonly wants: readonly Want[];
}

interface OilGiven {
  readonly oil: Oil;
  readonly oilCell: string | number;
}

/** What keeps a volume of this oil from being a mass: a fat that is solid. */
export function oilTrouble(bench: Bench): string | undefined {
  const nothing = (): undefined => undefined;
  if (amountUnitNamed(bench.draft.picked.unit)?.measures !== "volume") return undefined;
  const density = densityAt(oilOf(bench, nothing).oil, bench.figures.in("C", "temperature"));
  return isProblem(density) ? say(density) : undefined;
}

/** Cold fryer oil, where a volume of it is to be a mass. */
export function oilCold(bench: Bench): string | undefined {
  const nothing = (): undefined => undefined;
  if (amountUnitNamed(bench.draft.picked.unit)?.measures !== "volume") return undefined;
  const warm = bench.figures.in("C", "temperature");
  return halfSolidWords(
    oilOf(bench, nothing).oil,
    warm,
    warm && temperatureWords(bench.draft.typed.temperature, warm),
  );
}

function oilOf(bench: Bench, want: Wanting): OilGiven {
  const named = oilNamed(bench.draft.picked.oil);
  if (named) return { oil: named, oilCell: named.name };
  const density = optional(bench, "sizes", "density", want);
  if (!density) return { oil: oilNotNamed, oilCell: oilNotNamed.density.toNumber() };
  return { oil: oilOfDensity(as("kg/L", density)), oilCell: density.toNumber() };
}

function wantedSizes(bench: Bench, want: Wanting): readonly Exact[] {
  const { sizesBy } = bench.draft.picked;
  const found = sizesOf(sizesBy, bench.figures);
  if (found.kind === "sizes") return found.values;
  if (found.kind === "wrong") want("sizes", found.sentence);
  else if (sizesBy === "steps") {
    for (const field of ["from", "to", "step"] as const) needed(bench, "sizes", field, want);
  } else {
    const list = bench.figures.list("sizes");
    want("sizes", list.kind === "wrong" ? list.sentence : "Fill in Batch sizes.");
  }
  return [];
}

export function workingOf(bench: Bench): Working {
  const wants: Want[] = [];
  const want: Wanting = (step, sentence) => {
    if (!wants.some((each) => each.sentence === sentence)) wants.push({ step, sentence });
    return undefined;
  };
  const sizes = wantedSizes(bench, want);
  const unit = amountUnitNamed(bench.draft.picked.unit);
  const oil = oilOf(bench, want);
  const temperature = optional(bench, "sizes", "temperature", want);
  const columns = columnsOf(bench, want);
  const limit = needed(bench, "compare", "limit", want);
  if (columns.length > mostColumns) {
    want(
      "compare",
      `${String(columns.length)} columns are too many; ${String(mostColumns)} at most.`,
    );
  }
  if (wants.length > 0 || !unit || !limit) return { question: undefined, wants };
  return {
    question: {
      sizes,
      unit,
      ...oil,
      temperature: temperature ? as("C", temperature) : usualTemperature,
      by: bench.draft.picked.by,
      columns,
      limitFfa: as("%", limit),
    },
    wants,
  };
}
