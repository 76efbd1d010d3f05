/** What the result at hand is worth: the word its row will show. */
import { isProblem } from "../../core/problem/problem";
import { type Worth, worthOf as worthOfResult } from "../../workbook/record/worth";
import type { Draft } from "./draft";
import type { Seen } from "./nudges/nudge";
import type { Working } from "./working";

/** Why no dose is made from it before somebody has said that it is to be used for all that; "" where one is. */
export function heldBack({ working, draft }: Pick<Seen, "working" | "draft">): string {
  const { word, why } = worthOf(working, draft);
  const reason = why.join(" ");
  return word !== "Not yet" || draft.usedAllTheSame === reason ? "" : reason;
}

/** It is used although it is not to be used yet. */
export const isUsedAllTheSame = ({ working, draft }: Pick<Seen, "working" | "draft">): boolean =>
  worthOf(working, draft).word === "Not yet" && heldBack({ working, draft }) === "";

/** @param working with a result */
export const worthOf = (
  { judgement, titres, usual, acid, doubt, strength }: Working,
  draft: Draft,
): Worth =>
  worthOfResult({
    verdict: judgement?.verdict ?? "",
    titres: titres.length,
    hasRecord: usual !== undefined,
    doubt:
      doubt === undefined || acid === undefined || isProblem(acid)
        ? undefined
        : { ffa: acid.ffa.toNumber(), halfWidth: doubt.halfWidth },
    hasTitrantPercent: strength?.percent !== undefined,
    isByVolume: draft.picked.sample === "by volume",
  });
