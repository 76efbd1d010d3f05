/** Titrant and batch of one lye: what it means, and what the lots' own rows say against it. */
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { Draft } from "./draft";
import { chosenLots } from "./mix";

/** @returns a sentence where a lot was titrated with another base; undefined where none says so */
export function notOneLye(draft: Draft, recorded: readonly RecordedLot[]): string | undefined {
  const { base, titrantLye } = draft.picked;
  if (titrantLye !== "same") return undefined;
  const other = chosenLots(draft, recorded).find(
    (lot) => lot !== undefined && lot.titrantBase !== "" && lot.titrantBase !== base,
  );
  return other === undefined
    ? undefined
    : `Lot ${String(other.lot)} was titrated with ${other.titrantBase}, and this lye is ${base}: they are not the same lye.`;
}

export interface SaidOfTitrant {
  readonly tone: "know" | "check";
  readonly words: string;
}

/** What stands under "The titrant was made of". */
export function saidOfTitrant(
  draft: Draft,
  recorded: readonly RecordedLot[],
): SaidOfTitrant | undefined {
  const other = notOneLye(draft, recorded);
  if (other !== undefined) return { tone: "check", words: `${other} Pick Other lye above.` };
  const asIfPure = chosenLots(draft, recorded).some((lot) => lot?.isAsIfPure);
  if (draft.picked.titrantLye === "same") {
    const putRight = asIfPure
      ? " The titration took the lye as pure; its acid is put right here."
      : "";
    return {
      tone: "know",
      words: `One lye in burette and vessel: its assay matters for the base charge, not for the acid.${putRight}`,
    };
  }
  return asIfPure
    ? {
        tone: "check",
        words:
          "A titrant was taken as pure: the acid is this much at most. Was it this lye? Say so above.",
      }
    : undefined;
}
