/** Which titre the probe's curve was put in as: the same curve is no further replicate. */
import type { Draft, ReadingList } from "./draft";

/** Readings that came after it do not make it another curve. */
const isSameCurve = (one: string, other: string): boolean => {
  const [a, b] = [one.trim(), other.trim()];
  return a !== "" && b !== "" && (a.startsWith(b) || b.startsWith(a));
};

type Words = Pick<Draft["words"], "probePut" | "probeTitre">;

/** What is kept when the curve's end point is put in: it will be the next titre. */
export const puttingIn = ({ words, titres }: Draft): Words => ({
  probePut: words.probe,
  probeTitre: String(titres.length + 1),
});

/** The reading that is added next is the one whose end point was put in. */
export const isOfCurve = ({ words, titres }: Draft, list: ReadingList): boolean =>
  list === "titres" && Number(words.probeTitre) === titres.length + 1;

/** For the row: how its titres were seen. Some by the probe and some by a colour are said both. */
export function indicatorOf({ picked, habits, titres }: Draft): string {
  const byColour = habits.indicator;
  if (byColour === undefined || byColour === picked.indicator) return picked.indicator;
  const counts = titres.filter(({ omitted }) => omitted === undefined);
  const byProbe = counts.filter(({ isByProbe }) => isByProbe === true).length;
  if (byProbe === 0) return byColour;
  return byProbe === counts.length ? picked.indicator : `${byColour} and ${picked.indicator}`;
}

/** @returns the number of the titre that the curve in the box is; undefined while it is none */
export function titreOfCurve({ words, titres }: Draft): number | undefined {
  const number = Number(words.probeTitre);
  const isAdded = number > 0 && titres.length >= number;
  return isAdded && isSameCurve(words.probe, words.probePut) ? number : undefined;
}

/** Were the blanks titrated to a colour? A probe sees another end point. */
export const isBlankByColour = ({ picked, blanks }: Draft): boolean =>
  picked.blank === "titrated" && blanks.length > 0 && picked.indicator !== "pH meter";
