/** What is said of the record: how this hand scattered before, and what today makes of it. */
import { computed } from "../../../core/exact/exact";
import { counted } from "../../../sheet/counted";
import type { Usual } from "./usual-scatter";
import { fixed } from "../../widgets/shown-number";

const places = 3;

const leftOut = ({ accidents }: Usual): string =>
  accidents === 0
    ? ""
    : ` ${counted(accidents, "titration")} with readings far apart ${accidents === 1 ? "is" : "are"} left out.`;

/** "Your usual scatter is 0.031 mL, from 10 titrations." */
export function usualWords(usual: Usual): string {
  const { scatter, titrations, more } = usual;
  if (scatter === undefined) {
    return `After ${counted(more, "more titration")} of three titres your usual scatter is known.${leftOut(usual)}`;
  }
  const figure = fixed(computed(scatter.scatter), places);
  return `Your usual scatter is ${figure} mL, from ${counted(titrations, "titration")}.${leftOut(usual)}`;
}

export const usualQuestion = "Use your earlier titrations too? They show a bad titre sooner.";
