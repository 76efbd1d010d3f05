import { describe, expect, it } from "vitest";
import { isFault } from "../../../src/sheet/port";
import { blankSeries } from "../../../src/workbook/over-time/blank-series";
import { scatterSeries } from "../../../src/workbook/over-time/scatter-series";
import type { Series } from "../../../src/workbook/over-time/series";
import { planOverTime, writeOverTime } from "../../../src/workbook/planning/plan-over-time";
import { readTitrations } from "../../../src/workbook/planning/read-titrations";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import type { MemoryHost } from "../../host/memory";
import { openMemory } from "../../host/open-memory";

async function asked(host: MemoryHost) {
  const found = await readTitrations(host);
  if (isFault(found)) throw new Error("cannot be read");
  const series = [scatterSeries(found.rows), blankSeries(found.rows)];
  return { series: series.filter((each): each is Series => each.kind === "series"), today: 46_300 };
}

describe("the charts on a sheet", () => {
  it("are a new sheet, written once, and undo takes it away whole", async () => {
    const host = openMemory(sampleLogbook());
    const before = host.book;
    const wanted = await asked(host);
    const plan = await planOverTime(host, wanted);
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    const { fingerprint } = plan;
    const outcome = await writeOverTime(host, wanted, { fingerprint, agreed: [] });
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const sheet = host.book.sheets.find(({ name }) => name === "Over time");
    expect(sheet?.cells["0,0"]?.value).toBe("Scatter of each titration");
    expect(host.undoLabels).toEqual(["Make the sheet Over time"]);
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("hold each figure under its heading, and CONTROL of the very cells beside it", async () => {
    const host = openMemory(sampleLogbook());
    const { series } = await asked(host);
    const blanks = series.filter(({ title }) => title === "Blanks");
    const wanted = { series: blanks, today: 46_300 };
    const plan = await planOverTime(host, wanted);
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    const formula = plan.cells.find(({ content }) => content.kind === "formula");
    const last = 3 + (blanks[0]?.points.length ?? 0);
    expect(formula?.shown).toBe(`=TITRE.CONTROL(C4:C${String(last)})`);
    const first = plan.cells.find(({ address }) => address.endsWith("!C4"));
    // The sample's first blank.
    expect(first?.content).toMatchObject({ kind: "value", value: 0.15 });
  });

  it("are drawn of the figures' own cells, days along the bottom, below their table", async () => {
    const host = openMemory(sampleLogbook());
    const wanted = await asked(host);
    const can = await host.capabilities();
    if (isFault(can)) throw new Error("no answer");
    const drawing = Object.assign(Object.create(host) as MemoryHost, {
      capabilities: () => Promise.resolve({ ...can, hasCharts: true }),
    });
    const plan = await planOverTime(drawing, wanted);
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    const written = plan.steps.find((step) => step.do === "set-cells");
    if (written?.do !== "set-cells") throw new Error("nothing written");
    const charts = plan.steps.flatMap((step) => (step.do === "add-chart" ? [step] : []));
    expect(charts.map(({ title }) => title)).toEqual(wanted.series.map(({ title }) => title));
    for (const [place, { across, lines, place: over }] of charts.entries()) {
      const series = wanted.series[place];
      const at = (row: number, column: number): unknown => {
        const content = written.contents[row]?.[column];
        return content?.kind === "value" ? content.value : undefined;
      };
      expect(across.rows).toBe(series?.points.length);
      for (const [point, { day, value }] of (series?.points ?? []).entries()) {
        expect(at(across.row + point, across.column)).toBe(Math.floor(day));
        const first = lines[0]?.values;
        expect(at((first?.row ?? 0) + point, first?.column ?? 0)).toBeCloseTo(value, 6);
      }
      expect(lines.map(({ name }) => name)).toEqual([
        series?.what,
        ...(series?.lines.map(({ name }) => name) ?? []),
      ]);
      expect(over.row).toBeGreaterThanOrEqual(across.row + across.rows);
    }
  });

  it("are no charts where the program draws none, and the plan says so", async () => {
    const host = openMemory(sampleLogbook());
    const wanted = await asked(host);
    const can = await host.capabilities();
    const plan = await planOverTime(host, wanted);
    if (plan.kind !== "plan" || isFault(can)) throw new Error("no plan");
    const charts = plan.steps.filter((step) => step.do === "add-chart");
    expect(charts).toHaveLength(can.hasCharts ? wanted.series.length : 0);
    const without = Object.assign(Object.create(host) as MemoryHost, {
      capabilities: () => Promise.resolve({ ...can, hasCharts: false }),
    });
    const other = await planOverTime(without, wanted);
    if (other.kind !== "plan") throw new Error(other.sentence);
    expect(other.steps.some((step) => step.do === "add-chart")).toBe(false);
    expect(other.remarks.map(({ sentence }) => sentence)).toEqual([
      expect.stringContaining("A chart is drawn only in the spreadsheet program"),
    ]);
  });
});
