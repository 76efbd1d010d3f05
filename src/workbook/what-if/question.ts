/** What is compared: batch sizes down, and one thing that differs across. */
import type { Exact } from "../../core/exact/exact";
import type { AcidValue, Celsius, Percent } from "../../core/quantity/quantity";
import type { AmountUnit } from "../../core/quantity/units";
import type { Base } from "../../core/reference/bases";
import type { Oil } from "../../core/reference/oils";
import type { BookValue } from "../../sheet/book";

/** What differs from column to column. Beside a base, its own assay and charge. */
export type Compared = "acid" | "assay" | "charge" | "base";

export interface AcidSource {
  readonly value: AcidValue;
  /** Typed as % FFA, as oleic: the acid value follows from it. */
  readonly ffa?: Percent;
  /** Of this lot in `Titrations`, by reference: the value is what its row shows now. */
  readonly lot?: BookValue;
  /** Why its row says that it is not worth a dose yet, where it is used for all that. */
  readonly usedAllTheSame?: string;
}

/** All that a dose of this column rests on beside the batch size. */
export interface DoseColumn {
  readonly acid: AcidSource;
  readonly base: Base;
  readonly assay: Percent;
  /** Pure base, % of the oil's mass. */
  readonly charge: Percent;
}

export interface WhatIfQuestion {
  readonly sizes: readonly Exact[];
  readonly unit: AmountUnit;
  readonly oil: Oil;
  /** The oil as a cell says it: its name, or its density at 20 C. */
  readonly oilCell: BookValue;
  readonly temperature: Celsius;
  readonly by: Compared;
  /** One or more. What is not compared is the same in all of them. */
  readonly columns: readonly DoseColumn[];
  readonly limitFfa: Percent;
}
