/** What cells may be typed into, as the file has it: lists to choose from, and other rules as areas alone. */
import type { Area } from "../../sheet/area";
import { readArea } from "../cell-address";
import { limits } from "../limits";
import type { Validation } from "../model";
import { attribute, flag } from "../xml/scan";
import { childOf, childrenOf, descendants, type Node } from "../xml/tree";

const areasIn = (written: string): Area[] =>
  written
    .trim()
    .split(/\s+/)
    .slice(0, limits.overlapping)
    .flatMap((each) => readArea(each) ?? []);

/** A list is written out between quotes, or stands in cells, or is worked out. */
function listed(formula: string): Pick<Validation, "words" | "refersTo"> {
  const quoted = /^"([\s\S]*)"$/.exec(formula.trim());
  if (!quoted) return formula.trim() === "" ? {} : { refersTo: `=${formula.trim()}` };
  const words = (quoted[1] ?? "").replaceAll('""', '"').split(",");
  return { words: words.map((word) => word.trim()).filter((word) => word !== "") };
}

const isStop = (node: Node): boolean =>
  flag(node, "showErrorMessage") && (attribute(node, "errorStyle") ?? "stop") === "stop";

function validation(node: Node, areas: readonly Area[], formula: string): Validation {
  const isList = attribute(node, "type") === "list";
  // the attribute says the opposite of its name
  const isShown = !flag(node, "showDropDown");
  return {
    areas,
    isStrict: isStop(node),
    ...(isList && isShown ? listed(formula) : {}),
  };
}

export function readValidations(frame: Node): Validation[] {
  const plain = childrenOf(childOf(frame, "dataValidations"), "dataValidation").map((node) =>
    validation(
      node,
      areasIn(attribute(node, "sqref") ?? ""),
      childOf(node, "formula1")?.text ?? "",
    ),
  );
  const extension = childOf(frame, "extLst");
  // the newer kind, for lists on other sheets, says in elements what the older says in attributes
  const newer = (extension ? descendants(extension, "dataValidation") : []).map((node) => {
    const first = childOf(node, "formula1");
    return validation(
      node,
      areasIn(descendants(node, "sqref")[0]?.text ?? ""),
      (first && descendants(first, "f")[0]?.text) ?? "",
    );
  });
  return [...plain, ...newer].filter(({ areas }) => areas.length > 0);
}
