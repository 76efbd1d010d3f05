/** Filters of a sheet and of its tables: which rows they let through; the rows they hide say so themselves. */
import type { Area } from "../../sheet/area";
import { readArea } from "../cell-address";
import { limits } from "../limits";
import type { Criterion, Filter } from "../filter";
import { attribute, count, flag } from "../xml/scan";
import { childOf, childrenOf, type Node } from "../xml/tree";

/** Undefined: it lets every row through. */
function criterionIn(node: Node): Criterion | undefined {
  const [only, ...more] = node.children;
  if (!only) return undefined;
  if (more.length > 0) return { kind: "other" };
  if (only.local === "filters") {
    const items = childrenOf(only, "filter");
    if (items.length !== only.children.length) return { kind: "other" };
    const words = items.slice(0, limits.overlapping).map((item) => attribute(item, "val") ?? "");
    return { kind: "words", words: flag(only, "blank") ? [...words, ""] : words };
  }
  if (only.local !== "customFilters") return { kind: "other" };
  const bound = (operator: string): number | undefined => {
    const found = only.children.filter((item) => attribute(item, "operator") === operator);
    const [first] = found;
    return first && found.length === 1 ? Number(attribute(first, "val") ?? NaN) : undefined;
  };
  const [atLeast, atMost] = [bound("greaterThanOrEqual"), bound("lessThanOrEqual")];
  const bounds = [atLeast, atMost].filter((each) => each !== undefined);
  const isRead = bounds.length === only.children.length && !bounds.some(Number.isNaN);
  if (!isRead || (bounds.length === 2 && !flag(only, "and"))) return { kind: "other" };
  return {
    kind: "figures",
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
  };
}

/** @param area where the element does not say, as in some tables */
export function filterIn(node: Node | undefined, area?: Area): Filter | undefined {
  const found = node && (readArea(attribute(node, "ref") ?? "") ?? area);
  if (!found) return undefined;
  const columns = childrenOf(node, "filterColumn").flatMap((each) => {
    const criterion = criterionIn(each);
    return criterion ? [{ column: found.column + count(each, "colId"), criterion }] : [];
  });
  return { area: found, columns };
}

export const sheetFilter = (frame: Node): Filter | undefined =>
  filterIn(childOf(frame, "autoFilter"));
