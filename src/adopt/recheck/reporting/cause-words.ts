/** The cause of a finding in words: one mistake, two together, or which of several it may be. */
import { type MistakeId, mistakeOf } from "../mistakes/all";
import type { Finding } from "./finding";

type Cause = Pick<Finding, "mistake" | "also" | "orElse" | "bases">;

const named = ([mistake, also]: readonly MistakeId[], { bases }: Cause): string => {
  const one = (id: MistakeId | undefined): string =>
    id === undefined
      ? ""
      : id === "other-base" && bases
        ? `Another base's figure: that of ${bases.counted}, and ${bases.weighed} is weighed out`
        : mistakeOf(id).name;
  return also === undefined ? one(mistake) : `${one(mistake)}, together with: ${one(also)}`;
};

const withSmall = (words: string): string =>
  /^[A-Z][a-z]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;

/** More are not told one by one. */
const most = 4;

const ownIds = ({ mistake, also }: Cause): MistakeId[] =>
  also === undefined ? [mistake] : [mistake, also];

/** Every mistake that is named, those that are not sure among them. */
export const mistakesIn = (cause: Cause): MistakeId[] => [
  ...new Set([...ownIds(cause), ...(cause.orElse ?? []).flat()]),
];

const withLarge = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * "Blank not subtracted", "Density taken as 1, together with: US and imperial gallon mixed up", "Blank not
 * subtracted, or density taken as 1: both give this figure"
 */
export function causeWords(cause: Cause): string {
  const others = cause.orElse ?? [];
  if (others.length === 0) return named(ownIds(cause), cause);
  const all = [ownIds(cause), ...others].map((ids) => withSmall(named(ids, cause)));
  const told = all.length > most ? [...all.slice(0, most - 1), "another known mistake"] : all;
  return `${withLarge(told.join(", or "))}: ${all.length === 2 ? "both give" : "each gives"} this figure`;
}
