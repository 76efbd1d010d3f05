import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { againstPlot, againstWords } from "../../../src/taskpane/over-time/against";
import { chargeSeries } from "../../../src/workbook/over-time/batch-series";
import type { RecordedBatch } from "../../../src/workbook/planning/read-batches";
import { times } from "../../thorough";
import { chartsOf, drawable, nothingChosen } from "../../../src/taskpane/over-time/charts";
import { plotWords, seriesPlot } from "../../../src/taskpane/over-time/plot";
import { readRecord } from "../../../src/taskpane/over-time/read-record";
import { sheetDay } from "../../../src/taskpane/widgets/day";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";

const room = { left: 40, right: 240, top: 20, bottom: 160 };

async function ofSample(chosen = nothingChosen) {
  const found = await readRecord(openMemory(sampleLogbook()));
  if (found.state !== "read") throw new Error("not read");
  return chartsOf(found, chosen, sheetDay("2026-09-30"));
}

describe("the charts of the sample logbook", () => {
  it("are of its scatter, its blanks and its bottle with the most checks", async () => {
    const charts = await ofSample();
    expect(drawable(charts).map(({ title }) => title)).toEqual([
      "Scatter of each titration",
      "Blanks",
      "Titrant K-5, KOH",
      "Yield",
      "Lye against acid",
    ]);
    expect(charts.titrants).toEqual(["K-6, KOH", "K-5, KOH"]);
    expect(charts.oil.kind).toBe("too few");
  });

  it("show what batches gave of their oil, and which had other lye than was meant", async () => {
    const { made, charge } = await ofSample();
    if (made.kind !== "series" || charge.kind !== "series") throw new Error("no series");
    // by hand: 96 of 100 L, 168 of 180 L, 108.5 L of 25 imperial gallons of 4.54609 L
    const wanted = [96, (100 * 168) / 180, (100 * 108.5) / (25 * 4.54609)];
    expect(made.points.map(({ of }) => of)).toEqual(["B-112", "B-113", "B-114"]);
    for (const [at, { value }] of made.points.entries())
      expect(value).toBeCloseTo(wanted[at] ?? 0, 9);
    expect(made.sentence).toBe(
      "100 L of oil gave 93.3 to 96.0 L of fuel; the last, B-114, 95.5 L.",
    );
    // by hand: NQ-41 has 56.1 x 0.0998 x 2.3/10 mg KOH/g; 91.5 kg; 910 g of 90 % were weighed
    const catalyst = (91.5 * (((56.1 * 0.0998 * 2.3) / 10 / 56.1) * 56.1053 + 7.65)) / 0.9;
    const [first] = charge.points;
    expect(first?.value).toBeCloseTo(0.765 + (0.09 * (910 - catalyst)) / 91.5, 9);
    expect(first).toMatchObject({ said: "acid value 1.29", isOut: false });
    expect(charge.lines).toEqual([{ name: "Charge meant", values: [0.765, 0.765, 0.765] }]);
    expect(charge.sentence).toBe(
      "Every batch had the lye for its reaction that was meant, whatever its acid.",
    );
  });

  it("follow the bottle that is chosen", async () => {
    const charts = await ofSample({ titrant: "K-6, KOH", oil: "" });
    expect(charts.strength.sentence).toBe("2 more checks of K-6 make a line.");
  });

  it("show what was left for the reaction against the acid of each batch, in their order and within the room", () => {
    const acid = fc.option(
      fc.integer({ min: 10, max: 6000 }).map((n) => n / 100),
      { nil: undefined },
    );
    const row = fc.record({
      acid,
      left: fc.integer({ min: -100, max: 300 }).map((n) => n / 100),
      isOff: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 2, maxLength: 9 }), (rows) => {
        const batches = rows.map(
          (each, at) =>
            ({
              batch: `B-${String(at)}`,
              row: at,
              date: 46000 + at,
              under: (heading: string) =>
                ({
                  "Left for reaction %": each.left,
                  "Charge %": 0.8,
                  "Acid value mg KOH/g": each.acid ?? "",
                  "It went": each.isOff ? "Less lye than meant" : "Lye as meant.",
                })[heading] ?? "",
            }) as unknown as RecordedBatch,
        );
        const found = chargeSeries(batches);
        if (found.kind !== "series" || found.against === undefined) throw new Error("no series");
        const plot = againstPlot(found, found.against, room);
        const known = rows.flatMap((each, at) =>
          each.acid === undefined ? [] : [{ ...each, acid: each.acid, of: `B-${String(at)}` }],
        );
        if (known.length < 2) {
          expect(plot).toBeUndefined();
          return;
        }
        expect(plot?.points.map(({ of, isOut }) => [of, isOut])).toEqual(
          known.map(({ of, isOff }) => [of, isOff]),
        );
        for (const [
          at,
          {
            at: [x, y],
          },
        ] of plot?.points.entries() ?? []) {
          expect(x >= room.left && x <= room.right && y >= room.top && y <= room.bottom).toBe(true);
          const [here, first] = [known[at], known[0]];
          const start = plot?.points[0]?.at ?? [0, 0];
          if (here && first) {
            // more acid stands further right, more lye higher up
            expect(x > start[0]).toBe(here.acid > first.acid);
            expect(y < start[1]).toBe(here.left > first.left);
          }
        }
        const words = againstWords(found, found.against);
        for (const { of, isOff } of known)
          expect(words).toMatch(new RegExp(`${of} [^;]*${isOff ? ", flagged" : "\\d"}[;.]`));
      }),
      { numRuns: times(60) },
    );
  });

  it("stand within the room there is, earlier days left of later ones", async () => {
    for (const series of drawable(await ofSample())) {
      const { points, lines } = seriesPlot(series, room);
      const places = [...points.map(({ at }) => at), ...lines.flatMap((line) => line.points)];
      for (const [x, y] of places) {
        expect(x).toBeGreaterThanOrEqual(room.left);
        expect(x).toBeLessThanOrEqual(room.right);
        expect(y).toBeGreaterThanOrEqual(room.top);
        expect(y).toBeLessThanOrEqual(room.bottom);
      }
      const across = points.map(({ at }) => at[0]);
      expect(across).toEqual([...across].sort((a, b) => a - b));
    }
  });

  it("show a scatter of the last digit as little, and a large one as large", async () => {
    const series = drawable(await ofSample()).find(({ title }) => title === "Lye against acid");
    if (series === undefined) throw new Error("no such series");
    const charges = (values: readonly number[]) => ({
      ...series,
      points: values.map((value, at) => ({
        day: 46_300 + at,
        value,
        of: "B",
        said: "",
        isOut: false,
      })),
      lines: [{ name: "Charge meant", values: values.map(() => 0.765) }],
    });
    const part = (values: readonly number[]): number => {
      const heights = seriesPlot(charges(values), room).points.map(({ at }) => at[1]);
      return (Math.max(...heights) - Math.min(...heights)) / (room.bottom - room.top);
    };
    // 0.764 to 0.766 beside ten of the last digit, 0.010: a fifth of the height
    expect(part([0.764, 0.765, 0.766])).toBeCloseTo(0.2, 6);
    expect(part([0.5, 0.765, 0.9])).toBeGreaterThan(0.8);
    expect(part([0.765, 0.765])).toBe(0);
  });

  it("keep the names of their lines a name's height apart", async () => {
    for (const series of drawable(await ofSample())) {
      const names = seriesPlot(series, room).lines.map(({ nameAt }) => nameAt);
      const sorted = [...names].sort((a, b) => a - b);
      for (const [place, at] of sorted.entries()) {
        if (place > 0) expect(at - (sorted[place - 1] ?? 0)).toBeGreaterThanOrEqual(12.999);
      }
    }
  });

  it("are said in words as well, with the last figure and what is flagged", async () => {
    const [scatter] = drawable(await ofSample());
    if (!scatter) throw new Error("no scatter");
    expect(plotWords(scatter)).toMatch(
      /^Scatter of each titration: standard deviation of its titres, 8 from 1 Sep 2026 to 23 Sep 2026; .*flagged\.$/,
    );
  });
});
