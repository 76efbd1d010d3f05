/**
 * The whole table as one formula that spills. WHATIF compares acid values alone, and counts a volume
 * as at 20 C: where it cannot say the same as the table, it is not offered, and why is said.
 */
import { usualTemperature } from "../../core/reference/oils";
import type { WhatIfQuestion } from "./question";

export type OneFormula =
  | {
      readonly kind: "formula";
      readonly formula: string;
      /** Cells it fills, its own included. */
      readonly rows: number;
      readonly columns: number;
    }
  | { readonly kind: "not-offered"; readonly why: string };

const notOffered = (why: string): OneFormula => ({ kind: "not-offered", why });

/** A cell holds no longer formula. */
const longest = 8_000;

export function oneFormula(question: WhatIfQuestion): OneFormula {
  const { sizes, unit, oilCell, temperature, by, columns, limitFfa } = question;
  const [first] = columns;
  if (by !== "acid" || !first) {
    return notOffered("One formula compares acid values alone: write the table instead.");
  }
  if (columns.some(({ acid }) => acid.lot !== undefined)) {
    return notOffered("One formula takes typed acid values: the table can follow a recorded lot.");
  }
  if (unit.measures === "volume" && !temperature.eq(usualTemperature)) {
    return notOffered("One formula counts a volume as at 20 C: the table takes the temperature.");
  }
  const acids = columns.map(({ acid }) => acid.value.toNumber());
  const given = [
    `{${sizes.map((size) => size.toNumber()).join(";")}}`,
    `"${unit.name}"`,
    `{${acids.join(",")}}`,
    `"${first.base.name}"`,
    first.assay.toNumber(),
    first.charge.toNumber(),
    typeof oilCell === "string" ? `"${oilCell}"` : oilCell,
    limitFfa.toNumber(),
  ];
  const formula = `=TITRE.WHATIF(${given.join(",")})`;
  if (formula.length > longest) {
    return notOffered("One formula cannot hold so many figures: write the table instead.");
  }
  return { kind: "formula", formula, rows: sizes.length + 1, columns: columns.length + 1 };
}
