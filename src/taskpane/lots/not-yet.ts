/** What a lot's own row says of its result, where a dose is to be made of it. */
import { noAcidYet, type RecordedLot } from "../../workbook/planning/read-lots";
import { worthText } from "../../workbook/record/worth";
import { lotMark } from "./lot-mark";

/** Why no dose is made of this lot yet: "lot SW-17: the three lie 0.50 mL apart ..."; "" where one is. */
export const notYetOf = (lot: RecordedLot): string =>
  lot.worth?.word === "Not yet" ? `lot ${lotMark(lot)}: ${lot.worth.why.join(" ")}` : "";

/** Why a lot has no acid value: an #N/A there is a row that waits for its titres. */
export const noAcidWords = ({ trouble }: RecordedLot): string =>
  trouble === "#N/A" || trouble === noAcidYet
    ? "not titrated yet"
    : trouble.startsWith("#")
      ? `its acid value shows ${trouble}: see its row`
      : trouble;

/** "Lot SW-17: Good." */
export function lotWorth(lot: RecordedLot): string | undefined {
  if (lot.worth === undefined) return undefined;
  const words = worthText(lot.worth);
  return `Lot ${lotMark(lot)}: ${words.endsWith(".") ? words : `${words}.`}`;
}
