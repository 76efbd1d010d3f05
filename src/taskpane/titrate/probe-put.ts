/** Which titre the probe's curve was put in as: the same curve is no further replicate. */
import type { Draft } from "./draft";

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

/** @returns the number of the titre that the curve in the box is; undefined while it is none */
export function titreOfCurve({ words, titres }: Draft): number | undefined {
  const number = Number(words.probeTitre);
  const isAdded = number > 0 && titres.length >= number;
  return isAdded && isSameCurve(words.probe, words.probePut) ? number : undefined;
}

/** Were the blanks titrated to a colour? A probe sees another end point. */
export const isBlankByColour = ({ picked, blanks }: Draft): boolean =>
  picked.blank === "titrated" && blanks.length > 0 && picked.indicator !== "pH meter";
