/** The titres as the picture shows them: those that count as they were judged, those left out as read. */
import { type Band, bandOf } from "../../../core/replicates/band";
import type { Titrated } from "./divisions";
import type { Seen } from "../nudges/nudge";
import { placesIn, usedOf } from "../readings";

interface Picture {
  readonly titrated: readonly Titrated[];
  readonly band: Band;
  /** mL; 0 where it is not known. */
  readonly step: number;
  readonly places: number;
}

/** @returns undefined before the first titre that counts */
export function titratedOf({ draft, working }: Seen): Picture | undefined {
  const { judgement, titres } = working;
  if (judgement === undefined) return undefined;
  const { set, found } = judgement;
  const standing = titres.flatMap(({ number }, place): Titrated[] => {
    const value = set.judged[place]?.toNumber();
    const mark = judgement.marks.get(number) ?? "not tested";
    return value === undefined ? [] : [{ name: `Titre ${number}`, value, mark }];
  });
  // a titre left out has no place among the masses that the others are judged on
  const omitted = set.hasOwnMasses
    ? []
    : draft.titres.flatMap((reading, index): Titrated[] =>
        reading.omitted === undefined
          ? []
          : [{ name: `Titre ${index + 1}`, value: usedOf(reading).toNumber(), mark: "omitted" }],
      );
  const places = Math.max(
    0,
    set.step.decimalPlaces(),
    ...draft.titres.map(({ used }) => placesIn(used)),
  );
  return {
    titrated: [...standing, ...omitted],
    band: bandOf(set, found),
    step: set.step.toNumber(),
    places,
  };
}
