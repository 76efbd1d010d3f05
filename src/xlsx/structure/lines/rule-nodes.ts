/** Conditional formats and validations as a part holds them, in the old form and in the newer one. */
import { type Replacement, splice } from "../../../sheet/formula/splice";
import { areaName } from "../../../sheet/cell-name";
import { refuse } from "../../problem";
import { attribute } from "../../xml/scan";
import { descendants, type Node } from "../../xml/tree";
import { tagOf, textOf } from "./in-place";
import type { Lines } from "./lines";
import { movedRules, TooManyParts, Unreadable } from "./moved-rules";
import { areasOf } from "./refs";

/** A text of the rule, and how another is put in its place. */
interface Spot {
  readonly text: string;
  put(now: string): readonly Replacement[];
}

const spotOf = (node: Node): Spot => ({ text: node.text, put: (now) => [textOf(node, now)] });

const isFigure = (text: string): boolean => text.trim() === "" || Number.isFinite(Number(text));

/** A figure of a scale may be a formula; figures and texts stay as they are written. */
function valueSpots(part: string, node: Node): Spot[] {
  return descendants(node, "cfvo").flatMap((each) => {
    const text = attribute(each, "val");
    if (text === undefined || isFigure(text)) return [];
    return [{ text, put: (now: string) => tagOf(part, each, { val: now }) }];
  });
}

function formulaSpots(part: string, node: Node): Spot[] {
  const named = ["formula", "formula1", "formula2", "f"].flatMap((name) => descendants(node, name));
  // the newer form has its formulas one level further in
  const texts = named.filter(({ children, text }) => children.length === 0 && text.trim() !== "");
  return [...texts.map(spotOf), ...valueSpots(part, node)];
}

function placeSpot(part: string, node: Node): Spot | undefined {
  const text = attribute(node, "sqref");
  if (text !== undefined) return { text, put: (now) => tagOf(part, node, { sqref: now }) };
  const inner = node.children.find(({ local }) => local === "sqref");
  return inner && spotOf(inner);
}

/** The rule as it is to stand now, once for each part it was parted into. */
export function movedRuleNode(
  part: string,
  node: Node,
  home: string,
  lines: Lines,
): readonly string[] {
  const place = placeSpot(part, node);
  if (!place || place.text.trim() === "") return [part.slice(node.start, node.end)];
  const spots = formulaSpots(part, node);
  const before = { areas: areasOf(place.text), formulas: spots.map(({ text }) => text) };
  const after = movedOrRefused(before, place.text, home, lines);
  return after.map(({ areas, formulas }) => {
    const changes = [
      ...place.put(areas.map(areaName).join(" ")),
      ...spots.flatMap((spot, index) => {
        const now = formulas[index] ?? spot.text;
        return now === spot.text ? [] : spot.put(now);
      }),
    ];
    const within = changes.map((each) => ({
      ...each,
      start: each.start - node.start,
      end: each.end - node.start,
    }));
    return splice(part.slice(node.start, node.end), within);
  });
}

function movedOrRefused(
  rule: Parameters<typeof movedRules>[0],
  place: string,
  sheet: string,
  lines: Lines,
) {
  try {
    return movedRules(rule, sheet, lines);
  } catch (thrown) {
    if (thrown instanceof TooManyParts) {
      return refuse({ code: "cannot-shift", sheet, place, trouble: "too-many-rules" });
    }
    if (!(thrown instanceof Unreadable)) throw thrown;
    return refuse({ code: "cannot-shift", sheet, place, trouble: "unreadable-formula" });
  }
}
