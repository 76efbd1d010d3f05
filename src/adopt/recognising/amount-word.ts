/** What a heading counts the oil in when that is no unit: "IBC", "Drums", "Oil (totes)". */
import { unitAlone } from "./heading";

const container =
  /\b(?:drum|barrel|ibc|tote|container|cubie|tank|jug|can|keg|bucket|pail|jerry ?can|carboy|bin|pot|bottle|bag)s?\b/i;

/** The word of a container that a heading names; "" for none. */
export const containerIn = (heading: string): string => container.exec(heading)?.[0] ?? "";

const plain =
  /^(?:oil|wvo|uco|svo|fat|amount|qty|quantity|in|used|of|no|number|batch|volume|size)$/i;

/** The word in brackets, or of a container; "" where the heading names a unit or nothing. */
export function amountWordIn(heading: string): string {
  const [, inner = ""] = /[([{]([^)\]}]*)[)\]}]/.exec(heading) ?? [];
  const word = inner.trim();
  const isWord =
    word !== "" && word.length <= 20 && !plain.test(word) && /^[a-z][a-z ]*$/i.test(word);
  if (isWord && unitAlone(word) === undefined) return word;
  return containerIn(heading);
}
