/** The part of a chart: what kind it is and, of kinds that are drawn, all that the picture needs. */
import type { ChartGroup, ChartPicture, ChartSeries, FileChart } from "../../file-chart";
import { limits } from "../../limits";
import { namespaces } from "../../package/names";
import { attribute } from "../../xml/scan";
import { childOf, childrenOf, descendants, type Node } from "../../xml/tree";
import type { Theme } from "../colours";
import { axesOf } from "./axes";
import { paintOf } from "./paint";
import { figuresOf, numberOf, saysYes, textOf, valueOf } from "./parts";

/** In front of the word chart. */
const words: Readonly<Record<string, string>> = {
  lineChart: "line",
  barChart: "column",
  scatterChart: "scatter",
  areaChart: "area",
  pieChart: "pie",
  ofPieChart: "pie of pie",
  doughnutChart: "doughnut",
  radarChart: "radar",
  bubbleChart: "bubble",
  stockChart: "stock",
  surfaceChart: "surface",
  line3DChart: "3-D line",
  bar3DChart: "3-D column",
  pie3DChart: "3-D pie",
  area3DChart: "3-D area",
  surface3DChart: "3-D surface",
};

/** Of the newer kinds (MS-ODRAWXML 2.24.3), by the layout of their first series. */
const newer: Readonly<Record<string, string>> = {
  boxWhisker: "box and whisker",
  clusteredColumn: "histogram",
  funnel: "funnel",
  paretoLine: "Pareto",
  regionMap: "map",
  sunburst: "sunburst",
  treemap: "treemap",
  waterfall: "waterfall",
};

function kindOf(group: Node): ChartGroup["kind"] | undefined {
  if (group.local === "lineChart") return "line";
  if (group.local === "scatterChart") return "scatter";
  if (group.local !== "barChart") return undefined;
  return valueOf(group, "barDir") === "bar" ? "bar" : "column";
}

const stackings = { stacked: "stacked", percentStacked: "full" } as const;

/** A scatter's own default is a line; its style can say that there is none. */
const isOnlyMarked = (group: Node): boolean =>
  group.local === "scatterChart" && /^marker$/.test(valueOf(group, "scatterStyle") ?? "");

function seriesOf(node: Node, group: Node, place: number, theme: Theme): ChartSeries | undefined {
  const up = figuresOf(childOf(node, "val") ?? childOf(node, "yVal"));
  const across = figuresOf(childOf(node, "cat") ?? childOf(node, "xVal"));
  const name = textOf(childOf(node, "tx"));
  if (!up) return undefined;
  const paint = paintOf(node, theme, group.local === "barChart");
  const isMarked = group.local === "lineChart" && !saysYes(group, "marker");
  return {
    place: numberOf(node, "idx") ?? place,
    up,
    ...(isMarked && paint.mark === undefined ? { mark: "none" } : {}),
    ...paint,
    isJoined: paint.isJoined && !isOnlyMarked(group),
    ...(across ? { across } : {}),
    ...(name ? { name } : {}),
  };
}

function groupOf(node: Node, kind: ChartGroup["kind"], theme: Theme): ChartGroup {
  const grouping = valueOf(node, "grouping") ?? "";
  return {
    kind,
    stacking: stackings[grouping as keyof typeof stackings] ?? "none",
    gap: numberOf(node, "gapWidth") ?? 150,
    overlap: numberOf(node, "overlap") ?? 0,
    axes: childrenOf(node, "axId").map((axis) => attribute(axis, "val") ?? ""),
    series: childrenOf(node, "ser")
      .slice(0, limits.chartSeries)
      .flatMap((series, place) => seriesOf(series, node, place, theme) ?? []),
  };
}

const legendSides = ["b", "t", "l", "r"] as const;

function legendOf(chart: Node): Pick<ChartPicture, "legend"> {
  const legend = childOf(chart, "legend");
  if (!legend) return {};
  const side = valueOf(legend, "legendPos") ?? "r";
  return { legend: legendSides.find((each) => each === side) ?? "r" };
}

const blanks = (chart: Node): ChartPicture["blanks"] => {
  const said = valueOf(chart, "dispBlanksAs");
  return said === "zero" || said === "span" ? said : "gap";
};

function pictureOf(chart: Node, groups: readonly ChartGroup[], plot: Node): ChartPicture {
  const heading = childOf(chart, "title");
  const title = textOf(heading);
  return {
    ...(title && title.text !== "" ? { title } : {}),
    isNamedBySeries: heading !== undefined && !title && !saysYes(chart, "autoTitleDeleted"),
    groups,
    axes: axesOf(plot),
    ...legendOf(chart),
    blanks: blanks(chart),
    leavesHidden: saysYes(chart, "plotVisOnly", true),
  };
}

/** What was read, or in words what it is. */
export function readChart(root: Node, theme: Theme): Pick<FileChart, "kind" | "picture"> {
  if (root.uri !== namespaces.chart) {
    const series = descendants(root, "series")[0];
    return { kind: newer[(series && attribute(series, "layoutId")) ?? ""] ?? "newer" };
  }
  const chart = childOf(root, "chart");
  const plot = childOf(chart, "plotArea");
  const parts = plot?.children.filter(({ local, uri }) => uri === plot.uri && local in words) ?? [];
  const groups = parts.flatMap((part) => {
    const kind = kindOf(part);
    return kind ? [groupOf(part, kind, theme)] : [];
  });
  const [first] = parts;
  const undrawn = parts.find((part) => kindOf(part) === undefined);
  const named = undrawn ?? first;
  const kind = named ? (words[named.local] ?? "newer") : "empty";
  if (!chart || !plot || undrawn || groups.length === 0) return { kind };
  const isBar = groups[0]?.kind === "bar";
  return { kind: isBar ? "bar" : kind, picture: pictureOf(chart, groups, plot) };
}
