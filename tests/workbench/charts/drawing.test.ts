/** Charts drawn: places worked out by hand, and laws over whatever a chart can hold. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ChartAxis, ChartGroup, ChartPicture } from "../../../src/xlsx/file-chart";
import { draw } from "../../../src/workbench/charts/drawing/draw";
import type { Drawing } from "../../../src/workbench/charts/drawing/drawing";

type Value = number | string | undefined;

const axis = (
  number: string,
  side: ChartAxis["side"],
  more: Partial<ChartAxis> = {},
): ChartAxis => ({
  number,
  side,
  kind: number === "across" ? "categories" : "figures",
  isHidden: false,
  hasLines: number !== "across",
  isReversed: false,
  ...more,
});

interface Given {
  readonly kind?: ChartGroup["kind"];
  readonly stacking?: ChartGroup["stacking"];
  readonly across?: readonly Value[];
  readonly series: readonly (readonly Value[])[];
  readonly axes?: readonly ChartAxis[];
  readonly more?: Partial<ChartPicture>;
}

const usualAxes = [axis("across", "b"), axis("up", "l")];

const pictureOf = ({
  kind = "line",
  stacking = "none",
  across,
  series,
  axes = usualAxes,
  more = {},
}: Given): ChartPicture => ({
  isNamedBySeries: false,
  blanks: "gap",
  leavesHidden: true,
  axes,
  groups: [
    {
      kind,
      stacking,
      gap: 100,
      overlap: stacking === "none" ? 0 : 100,
      axes: ["across", "up"],
      series: series.map((values, place) => ({
        place,
        isJoined: true,
        up: { values },
        ...(across ? { across: { values: across } } : {}),
      })),
    },
  ],
  ...more,
});

const [width, height] = [400, 300];
const drawn = (given: Given): Drawing => draw(pictureOf(given), width, height);

const points = (path: string): (readonly [number, number])[] =>
  [...path.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

interface Bar {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const bars = (path: string): Bar[] =>
  [...path.matchAll(/M(-?[\d.]+),(-?[\d.]+)h([\d.]+)v([\d.]+)/g)].map(([, ...found]) => {
    const [x = 0, y = 0, wide = 0, high = 0] = found.map(Number);
    return { x, y, width: wide, height: high };
  });

const figures = ({ words }: Drawing): string[] => words.map(({ text }) => text);

const allBars = ({ series }: Drawing): Bar[] => series.flatMap((each) => bars(each.bars));

describe("a chart drawn", () => {
  it("has columns as high as their figures, from zero, with room between their groups", () => {
    const { series, plot } = drawn({ kind: "column", series: [[1, 2, 4]] });
    const found = bars(series[0]?.bars ?? "");
    const [one, two, four] = found.map((bar) => bar.height);
    expect(two).toBeCloseTo(2 * (one ?? 0), 0);
    expect(four).toBeCloseTo(4 * (one ?? 0), 0);
    // the highest figure, 4, is the end of its axis
    expect(four).toBeCloseTo(plot.bottom - plot.top, 0);
    // a gap as wide as a column: each takes half of its third
    expect(found[0]?.width).toBeCloseTo((plot.right - plot.left) / 6, 0);
  });

  it("has columns below the axis for what is below zero", () => {
    const [up, down] = allBars(drawn({ kind: "column", series: [[3, -3]] }));
    expect(up?.height).toBeCloseTo(down?.height ?? 0, 0);
    expect((up?.y ?? 0) + (up?.height ?? 0)).toBeCloseTo(down?.y ?? 0, 0);
  });

  it("piles columns on each other, and to the whole where it is of shares", () => {
    const [first, second] = drawn({
      kind: "column",
      stacking: "stacked",
      series: [[3], [1]],
    }).series;
    const [low, high] = [bars(first?.bars ?? "")[0], bars(second?.bars ?? "")[0]];
    expect(low?.height).toBeCloseTo(3 * (high?.height ?? 0), 0);
    expect((high?.y ?? 0) + (high?.height ?? 0)).toBeCloseTo(low?.y ?? 0, 0);
    const shares = drawn({ kind: "column", stacking: "full", series: [[30], [10]] });
    const [most, least] = allBars(shares).map((bar) => bar.height);
    expect(most).toBeCloseTo(3 * (least ?? 0), 0);
    expect(figures(shares)).toContain("100%");
  });

  it("has lying bars from the left, the first category below", () => {
    const lying = drawn({ kind: "bar", across: ["a", "b"], series: [[2, 4]] });
    const [first, second] = allBars(lying);
    expect(second?.width).toBeCloseTo(2 * (first?.width ?? 0), 0);
    expect(first?.y).toBeGreaterThan(second?.y ?? Infinity);
    expect(first?.x).toBeCloseTo(lying.plot.left, 0);
  });

  it("has round figures at its axes, in the format of the axis or of the cells", () => {
    expect(figures(drawn({ kind: "column", series: [[37, 183]] }))).toEqual(
      expect.arrayContaining(["0", "50", "100", "150", "200"]),
    );
    const axes = [
      axis("across", "b"),
      axis("up", "l", { format: "0.00", step: 0.5, least: 0, most: 1 }),
    ];
    expect(figures(drawn({ series: [[0.2, 0.9]], axes })).slice(-3)).toEqual([
      "0.00",
      "0.50",
      "1.00",
    ]);
  });

  it("writes marks apart that the cells' format would write alike", () => {
    const picture = pictureOf({ kind: "column", series: [[0.2, 0.9]] });
    const [group] = picture.groups;
    if (!group) throw new Error("There is no group.");
    const series = group.series.map((each) => ({ ...each, up: { ...each.up, format: "0" } }));
    const words = draw({ ...picture, groups: [{ ...group, series }] }, width, height).words;
    const figuresUp = words.filter(({ anchor }) => anchor === "end").map(({ text }) => text);
    expect(new Set(figuresUp).size).toBe(figuresUp.length);
  });

  it("places days by how far they lie apart, in their order", () => {
    const axes = [axis("across", "b", { kind: "dates", format: "yyyy-mm-dd" }), axis("up", "l")];
    const days = drawn({ across: [46280, 46272, 46279], series: [[3, 1, 2]], axes });
    const [first, second, third] = points(days.series[0]?.line ?? "").map(([x]) => x);
    // 7 days, and then one
    expect(((second ?? 0) - (first ?? 0)) / ((third ?? 0) - (second ?? 0))).toBeCloseTo(7, 0);
    // 46272 is 2026-09-07
    expect(figures(days).some((text) => /^2026-09-\d\d$/.test(text))).toBe(true);
  });

  it("leaves a gap where there is no figure, spans it, or goes to zero there, as the chart says", () => {
    const line = (blanks: ChartPicture["blanks"]) =>
      drawn({ series: [[1, 2, undefined, 3, 4]], more: { blanks } }).series[0]?.line ?? "";
    expect(line("gap").match(/M/g)?.length).toBe(2);
    expect([line("span").match(/M/g)?.length, points(line("span")).length]).toEqual([1, 4]);
    expect([line("zero").match(/M/g)?.length, points(line("zero")).length]).toEqual([1, 5]);
  });

  it("counts the points of a scatter whose figures across are words", () => {
    const axes = [axis("across", "b", { kind: "figures" }), axis("up", "l")];
    const counted = drawn({ kind: "scatter", across: ["a", 9, 4], series: [[1, 2, 3]], axes });
    const [first, second, third] = points(counted.series[0]?.line ?? "").map(([x]) => x);
    expect((second ?? 0) - (first ?? 0)).toBeCloseTo((third ?? 0) - (second ?? 0), 0);
  });

  it("draws a hundred thousand points with a few for each pixel, the highest and the lowest among them", () => {
    const values = Array.from({ length: 100_000 }, (_, index) => Math.sin(index / 5000));
    values[54_321] = 9;
    values[12_345] = -9;
    const { series, plot } = drawn({ series: [values] });
    const found = points(series[0]?.line ?? "");
    expect(found.length).toBeLessThan(5 * (plot.right - plot.left));
    const heights = found.map(([, y]) => y);
    const [top, bottom] = [Math.min(...heights), Math.max(...heights)];
    const ordinary = heights.filter((y) => y > top + 50 && y < bottom - 50);
    expect(ordinary.length).toBeGreaterThan(heights.length - 20);
    expect(series[0]?.marks).toBe("");
    expect(allBars(drawn({ kind: "column", series: [values] })).length).toBeLessThan(width);
  });

  it("gives a second axis to what goes by one", () => {
    const two = pictureOf({ kind: "column", series: [[100, 200]] });
    const [group] = pictureOf({ series: [[0.1, 0.2]] }).groups;
    const right = axis("right", "r");
    const both = draw(
      {
        ...two,
        axes: [...usualAxes, right],
        groups: [...two.groups, ...(group ? [{ ...group, axes: ["across", "right"] }] : [])],
      },
      width,
      height,
    );
    expect(both.words.filter(({ anchor }) => anchor === "end").map(({ text }) => text)).toContain(
      "200",
    );
    expect(both.words.filter(({ anchor }) => anchor === "start").map(({ text }) => text)).toContain(
      "0.2",
    );
  });

  const value = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.double({ min: -1000, max: 1000, noNaN: true }),
    fc.integer({ min: 0, max: 3_000_000 }),
    fc.string({ maxLength: 40 }),
    fc.constant(undefined),
  );
  const list = fc.array(value, { maxLength: 40 });
  const number = fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }), { nil: undefined });
  const anyAxis = (name: string) =>
    fc
      .record({
        kind: fc.constantFrom<ChartAxis["kind"]>("categories", "dates", "figures"),
        side: fc.constantFrom<ChartAxis["side"]>("b", "t", "l", "r"),
        format: fc.option(fc.constantFrom("0.0", "yyyy-mm-dd", "[$-409]mmm", "0%", "@", "???"), {
          nil: undefined,
        }),
        isHidden: fc.boolean(),
        isReversed: fc.boolean(),
        least: number,
        most: number,
        step: fc.option(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), { nil: undefined }),
        base: fc.option(fc.constantFrom(2, 10), { nil: undefined }),
        title: fc.option(fc.record({ text: fc.string({ maxLength: 80 }) }), { nil: undefined }),
      })
      .map((given) => {
        const said = Object.entries(given).filter(([, each]) => each !== undefined);
        return axis(name, "b", Object.fromEntries(said) as Partial<ChartAxis>);
      });

  it("has its marks between the ends of its axis, however small that is beside its step", () => {
    const [least, most] = [-1e-290, -1e-290];
    const across = { number: "across", side: "b", kind: "figures", isHidden: false } as const;
    const up = { ...across, number: "up", kind: "categories", hasLines: true, isReversed: false };
    const axes = [{ ...across, hasLines: false, isReversed: false, least, most, step: 1e-9 }, up];
    const given = { kind: "bar", stacking: "none", across: [], series: [], axes } as const;
    const more = { legend: "b", blanks: "gap", title: { text: "" } } as const;
    const { words } = draw(pictureOf({ ...given, more } as never), 24, 24);
    expect(words.filter(({ x }) => x < -60 || x > 84)).toEqual([]);
  });

  it("is of sound places, whatever it holds and however small it is", () => {
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom<ChartGroup["kind"]>("line", "column", "bar", "scatter"),
          stacking: fc.constantFrom<ChartGroup["stacking"]>("none", "stacked", "full"),
          across: fc.oneof(list, fc.constant([])),
          series: fc.array(list, { maxLength: 4 }),
          axes: fc.tuple(anyAxis("across"), anyAxis("up")),
          more: fc.record({
            legend: fc.constantFrom<NonNullable<ChartPicture["legend"]>>("b", "t", "l", "r"),
            blanks: fc.constantFrom<ChartPicture["blanks"]>("gap", "zero", "span"),
            title: fc.record({ text: fc.string({ maxLength: 200 }) }),
          }),
        }),
        fc.integer({ min: 24, max: 1200 }),
        fc.integer({ min: 24, max: 900 }),
        (given, wide, high) => {
          const all = draw(pictureOf(given), wide, high);
          const paths = [
            ...all.strokes.map(({ path }) => path),
            ...[...all.series, ...all.legend].flatMap(({ line, marks, bars: drawnBars }) => [
              line,
              marks,
              drawnBars,
            ]),
          ].join("");
          expect(paths).not.toMatch(/NaN|Infinity|undefined|e[+-]/);
          for (const { x, y, text } of all.words) {
            expect([Number.isFinite(x), Number.isFinite(y), text.length > 0]).toEqual([
              true,
              true,
              true,
            ]);
            expect(x).toBeGreaterThanOrEqual(-60);
            expect(x).toBeLessThanOrEqual(wide + 60);
          }
        },
      ),
      { numRuns: 400 },
    );
  });
});
