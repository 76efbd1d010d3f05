import type { RecordedLot } from "../../workbook/planning/read-lots";

/** A lot's mark as text; `Titrations` may hold it as a number. */
export const lotMark = ({ lot }: RecordedLot): string => String(lot).trim();
