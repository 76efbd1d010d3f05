/** A batch as its wants and words see it. */
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import type { Figures } from "./figures";
import type { Working } from "./working";

export interface Seen {
  readonly draft: Draft;
  readonly figures: Figures;
  readonly working: Working;
  /** The lots on record, the latest first. */
  readonly recorded: readonly RecordedLot[];
  readonly mark: DecimalMark;
}
