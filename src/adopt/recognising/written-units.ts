/** Units, containers and bases as people write them beside figures and in headings. */
import { type AmountUnit, amountUnitNamed, amountUnits } from "../../core/quantity/units";
import { type Base, baseNamed } from "../../core/reference/bases";
import { unitAlone } from "./heading";
import type { LogbookMapping } from "./shape";
import type { RoleId } from "./roles";

/** The unit of an amount by the name that a heading was read to have: "US gal". */
export const amountUnitOf = (unit: string | undefined): AmountUnit | undefined =>
  amountUnits.find(({ inHeadings }) => inHeadings === unit);

/** A unit as people write it beside a figure, and nothing else: "litres", "US gal", not "200 L drum". */
export function unitWritten(text: string): AmountUnit | undefined {
  return amountUnitNamed(text) ?? amountUnitOf(unitAlone(text));
}

/** "potash", "KOH flakes 90%": the base that the words name first. */
export function baseWritten(text: string): Base | undefined {
  const exactly = baseNamed(text);
  if (exactly) return exactly;
  const words = text.toLowerCase();
  if (/koch3|potassium meth/.test(words)) return baseNamed("KOCH3");
  if (/naoch3|sodium meth/.test(words)) return baseNamed("NaOCH3");
  if (/\bkoh\b|potash|potassium/.test(words)) return baseNamed("KOH");
  return /\bnaoh\b|soda|sodium/.test(words) ? baseNamed("NaOH") : undefined;
}

/** A base that headings name: "ml KOH" is what the burette held, "KOH g" what was dosed. */
export function soleBase(mapping: LogbookMapping): {
  titrant: Base | undefined;
  catalyst: Base | undefined;
} {
  const named = (wanted: readonly RoleId[]): Base | undefined => {
    const texts = [
      ...mapping.columns.filter(({ role }) => wanted.includes(role)).map(({ heading }) => heading),
      ...mapping.constants.flatMap(({ role, from }) =>
        wanted.includes(role) && from.kind === "cell" ? [from.label] : [],
      ),
    ];
    const found = new Set(texts.map(baseWritten).filter((each) => each !== undefined));
    return found.size === 1 ? [...found][0] : undefined;
  };
  return {
    titrant: named(["titrantBase", "titre", "meanTitre", "correctedTitre", "strength", "molarity"]),
    catalyst: named([
      "base",
      "acidDose",
      "reactionDose",
      "catalyst",
      "catalystRate",
      "weighed",
      "assay",
    ]),
  };
}

const container =
  /\b(?:drum|barrel|ibc|tote|container|cubie|cube|tank|jug|can|keg|bucket|pail|jerry ?can|carboy|bin|pot|bottle|bag)s?\b/i;

/** The word of a container that a heading names; "" for none. */
export const containerIn = (heading: string): string => container.exec(heading)?.[0] ?? "";

const plain =
  /^(?:oil|wvo|uco|svo|fat|amount|qty|quantity|in|used|of|no|number|batch|volume|size)$/i;

/** What a heading counts the oil in when that is no unit ("IBC", "Drums", "Oil (totes)"): the word in brackets, or of a container; "" where the heading names a unit or nothing. */
export function amountWordIn(heading: string): string {
  const [, inner = ""] = /[([{]([^)\]}]*)[)\]}]/.exec(heading) ?? [];
  const word = inner.trim();
  const isWord =
    word !== "" && word.length <= 20 && !plain.test(word) && /^[a-z][a-z ]*$/i.test(word);
  if (isWord && unitAlone(word) === undefined) return word;
  return containerIn(heading);
}
