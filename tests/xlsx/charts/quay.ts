/** A week at the quay with charts of several kinds, as another program would write them. */
import { type Anchored, axis, chartPart, figures, rowsOf, words, written } from "./chart-files";

/** Kitchen, litres, acid value, and the days of three weeks from 2026-09-07 on. */
export const quayTable = [
  ["Kitchen", "Litres", "Acid value", "Day"],
  ["North Quay", 120, 1.3, 46272],
  ["Slipway", 200, 2.7, 46279],
  ["Tidewheel", 60, 7.8, 46286],
  ["Ferry galley", 90, 4.1, 46287],
] as const;

export const quayRows = rowsOf(quayTable);

const kitchens = words(
  "cat",
  "Data!$A$2:$A$5",
  quayTable.slice(1).map(([kitchen]) => String(kitchen)),
);
const litres = figures("val", "Data!$B$2:$B$5", [120, 200, 60, 90]);
const acid = (tag: "val" | "yVal"): string => figures(tag, "Data!$C$2:$C$5", [1.3, 2.7, 7.8, 4.1]);
const days = (tag: "cat" | "xVal"): string =>
  figures(tag, "Data!$D$2:$D$5", [46272, 46279, 46286, 46287]).replace(
    "<c:formatCode>0.0",
    "<c:formatCode>yyyy\\-mm\\-dd",
  );

const series = (index: number, name: string, inside: string): string =>
  `<c:ser><c:idx val="${String(index)}"/><c:order val="${String(index)}"/>${words("tx", name === "Litres" ? "Data!$B$1" : "Data!$C$1", [name])}${inside}</c:ser>`;

const ids = `<c:axId val="1"/><c:axId val="2"/>`;
const plotted = (plot: string, title: string, after = ""): string =>
  `<c:chart>${title}<c:plotArea><c:layout/>${plot}</c:plotArea>${after}<c:plotVisOnly val="1"/></c:chart>`;
const below = `<c:legend><c:legendPos val="b"/></c:legend>`;
const lines = "<c:majorGridlines/>";

export const columnPart = plotted(
  `<c:barChart><c:barDir val="col"/><c:grouping val="clustered"/>${series(0, "Litres", kitchens + litres)}${series(1, "Acid value", kitchens + acid("val"))}<c:gapWidth val="80"/>${ids}</c:barChart>${axis("catAx", 1, "b")}${axis("valAx", 2, "l", lines)}`,
  written("Oil by kitchen"),
  below,
);

export const linePart = plotted(
  `<c:lineChart><c:grouping val="standard"/>${series(0, "Acid value", days("cat") + acid("val"))}<c:marker val="1"/>${ids}</c:lineChart>${axis("dateAx", 1, "b", written("Day"))}${axis("valAx", 2, "l", lines + written("mg KOH/g"))}`,
  written("Acid value by day"),
);

export const scatterPart = plotted(
  `<c:scatterChart><c:scatterStyle val="lineMarker"/>${series(0, "Acid value", `<c:spPr><a:ln><a:noFill/></a:ln></c:spPr>${figures("xVal", "Data!$B$2:$B$5", [120, 200, 60, 90])}${acid("yVal")}`)}${ids}</c:scatterChart>${axis("valAx", 1, "b", written("Litres"))}${axis("valAx", 2, "l", lines)}`,
  "<c:title/>",
  `<c:legend><c:legendPos val="r"/></c:legend>`,
);

export const barPart = plotted(
  `<c:barChart><c:barDir val="bar"/><c:grouping val="percentStacked"/>${series(0, "Litres", kitchens + litres)}${series(1, "Acid value", kitchens + acid("val"))}<c:overlap val="100"/>${ids}</c:barChart>${axis("catAx", 1, "l")}${axis("valAx", 2, "b", lines)}`,
  written("Shares"),
  below,
);

export const piePart = plotted(
  `<c:pieChart>${series(0, "Litres", kitchens + litres)}</c:pieChart>`,
  written("Litres by kitchen"),
);

export const quayCharts: readonly Anchored[] = [
  { part: chartPart(columnPart), name: "Oil", over: [0, 5, 15, 12] },
  { part: chartPart(linePart), name: "Acid", over: [0, 13, 15, 20] },
  { part: chartPart(scatterPart), name: "Points", over: [17, 5, 32, 12] },
  { part: chartPart(barPart), name: "Shares", over: [17, 13, 32, 20] },
  { part: chartPart(piePart), name: "Slices", over: [34, 5, 44, 12] },
];
