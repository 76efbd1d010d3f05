/** The axes of a chart (ECMA-376 part 1, 21.2.2.25, 39, 43, 226). */
import type { ChartAxis } from "../../file-chart";
import { attribute, flag } from "../../xml/scan";
import { childOf, type Node } from "../../xml/tree";
import { numberOf, saysYes, textOf, valueOf } from "./parts";

const kinds: Readonly<Record<string, ChartAxis["kind"]>> = {
  catAx: "categories",
  serAx: "categories",
  dateAx: "dates",
  valAx: "figures",
};

const sides = ["b", "t", "l", "r"] as const;

function formatOf(axis: Node): { readonly format?: string } {
  const format = childOf(axis, "numFmt");
  const code = format && attribute(format, "formatCode");
  const isOfCells = !format || flag(format, "sourceLinked");
  return code === undefined || code === "" || isOfCells ? {} : { format: code };
}

/** What is given, and nothing where it is not. */
const given = <Key extends string>(key: Key, value: number | undefined) =>
  (value === undefined ? {} : { [key]: value }) as Partial<Record<Key, number>>;

function axisOf(node: Node, kind: ChartAxis["kind"]): ChartAxis {
  const scaling = childOf(node, "scaling");
  const side = valueOf(node, "axPos");
  const title = textOf(childOf(node, "title"));
  const step = numberOf(node, "majorUnit");
  const base = numberOf(scaling, "logBase");
  // of dates in months or years, its step is no number of days
  const isInDays = kind !== "dates" || (valueOf(node, "majorTimeUnit") ?? "days") === "days";
  return {
    number: valueOf(node, "axId") ?? "",
    kind,
    side: sides.find((each) => each === side) ?? (kind === "figures" ? "l" : "b"),
    ...(title ? { title } : {}),
    ...formatOf(node),
    isHidden: saysYes(node, "delete") || valueOf(node, "tickLblPos") === "none",
    hasLines: childOf(node, "majorGridlines") !== undefined,
    ...given("least", numberOf(scaling, "min")),
    ...given("most", numberOf(scaling, "max")),
    ...given("step", step !== undefined && step > 0 && isInDays ? step : undefined),
    ...given("base", base !== undefined && base > 1 ? base : undefined),
    isReversed: valueOf(scaling, "orientation") === "maxMin",
  };
}

export const axesOf = (plot: Node): ChartAxis[] =>
  plot.children.flatMap((node) => {
    const kind = node.uri === plot.uri ? kinds[node.local] : undefined;
    return kind ? [axisOf(node, kind)] : [];
  });
