/** A titre that does not exceed its blank, in the words of who stands at the burette: the pane has no cells. */
import type { Problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { Standing } from "./readings";

const again = "one of the two is wrong. Titrate both again.";

export function contradictionIn(titres: readonly Standing[], problem: Problem): string {
  const { fields } = problem;
  if (fields.code !== "titre-below-blank" && fields.code !== "titre-equals-blank")
    return say(problem);
  const { titre, blank } = fields;
  // beside titres that exceed the blank the one that does not is named
  const isAlone = titres.every((each) => each.titre.lte(blank));
  const name = isAlone ? "The titre" : `The titre of ${titre.toString()} mL`;
  return fields.code === "titre-below-blank"
    ? `${name} is lower than the blank: ${again}`
    : `${name} is no larger than the blank: ${again}`;
}
