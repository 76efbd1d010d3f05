/** What the acid of the batch is worth, by the titrations of its lots. */
import { isProblem } from "../../core/problem/problem";
import { usedAllTheSameWords } from "../../workbook/record/worth";
import { lotWorth, notYetOf } from "../lots/not-yet";
import { doubtText } from "../widgets/shown-number";
import type { Mix } from "./mix";
import type { Seen } from "./seen";

/** "4.66 ± 0.10 mg KOH/g": the part of it that is in doubt is that of its % FFA. */
export function acidValueWords({ acidValue, ffa, halfWidth }: Mix): string {
  const half = halfWidth === undefined ? undefined : (halfWidth * Number(acidValue)) / Number(ffa);
  return `${doubtText(acidValue, half, 2)} mg KOH/g`;
}

export interface LotWorth {
  readonly words: string;
  readonly isNotYet: boolean;
}

type OfBatch = Pick<Seen, "draft" | "working">;

const lotsOf = ({ working: { mix } }: OfBatch) =>
  mix === undefined || isProblem(mix) ? [] : mix.lots.map(({ recorded }) => recorded);

/** A sentence for each lot: "Lot SW-17: Good." */
export const lotWorths = (seen: OfBatch): readonly LotWorth[] =>
  lotsOf(seen).flatMap((lot) => {
    const words = lotWorth(lot);
    return words === undefined ? [] : [{ words, isNotYet: notYetOf(lot) !== "" }];
  });

/** Why the acid is not to be used yet; "" where it is. */
export const notYet = (seen: OfBatch): string =>
  lotsOf(seen)
    .map(notYetOf)
    .filter((why) => why !== "")
    .join(" ");

/** No dose is shown before somebody has said that it is to be used for all that. */
export const isHeldBack = (seen: OfBatch): boolean => {
  const why = notYet(seen);
  return why !== "" && seen.draft.usedAllTheSame !== why;
};

/** For the row's note; "" where there is nothing to say. */
export const allTheSame = (seen: OfBatch): string => {
  const why = notYet(seen);
  return why === "" ? "" : usedAllTheSameWords(why);
};
