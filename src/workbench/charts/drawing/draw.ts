/** A chart drawn: values in, places out. */
import type { ChartPicture } from "../../../xlsx/file-chart";
import { besideBars } from "./categories";
import { type Drawing, place, type Room, type Stroke, type Words } from "./drawing";
import { categoriesBelow, categoriesBeside, figuresBelow, marksFor } from "./below";
import { usual, widthOf } from "./letters";
import { legendIn } from "./legend";
import { namesIn } from "./names";
import { categoriesOf } from "./points";
import { type Scale, scaleFor } from "./scale";
import { seriesOn } from "./series";
import { type Side, type Sides, sidesOf } from "./sides";
import { axisTitled, titled } from "./titles";

const margin = 10;
const labelGap = 6;
const labelEach = 44;
/** Figures at a side take no more than that share of the width. */
const mostOfWidth = 0.35;

type Range = readonly [number, number];

const scaleOf = (side: Side, range: Range, marks: number): Scale =>
  scaleFor({ ...side, isDates: false, range, marks });

const widest = (scale: Scale): number =>
  scale.ticks.reduce((found, { label }) => Math.max(found, widthOf(label)), 0);

/** Room and words around the plot: titles and legend. */
function around(picture: ChartPicture, sides: Sides, width: number, height: number) {
  const whole = { left: margin, top: margin, right: width - margin, bottom: height - margin };
  const heading = titled(picture, whole);
  const legend = legendIn(namesIn(picture), heading.room, picture.legend);
  const [first, second] = sides.up;
  const [below, beside] = sides.isLying
    ? [first?.axis, sides.acrossAxis]
    : [sides.acrossAxis, first?.axis];
  const under = axisTitled(below?.title?.text ?? "", "bottom", legend.room);
  const left = axisTitled(beside?.title?.text ?? "", "left", under.room);
  const right = axisTitled(second?.axis?.title?.text ?? "", "right", left.room);
  const words = [heading, under, left, right].flatMap((each) => each.words);
  return { words, legend: legend.samples, room: right.room };
}

const gridOf = (scale: Scale, { left, right }: Room): Stroke[] =>
  scale.ticks.map(({ at }) => ({
    is: "grid",
    path: `M${place(left)},${place(at)}H${place(right)}`,
  }));

function labelsOf(side: Side, scale: Scale, x: number, anchor: Words["anchor"]): Words[] {
  if (side.axis?.isHidden) return [];
  return scale.ticks.map(({ at, label }) => ({ x, y: at + 4, text: label, anchor, size: usual }));
}

type Around = ReturnType<typeof around>;

/** Figures upwards: at the left, and those of a second axis at the right. */
function upright(picture: ChartPicture, sides: Sides, { room, words, legend }: Around): Plotted {
  const marks = marksFor(room.bottom - room.top - 20, labelEach);
  const width = (side: Side): number =>
    side.axis?.isHidden
      ? 0
      : Math.min(mostOfWidth * (room.right - room.left), widest(scaleOf(side, [1, 0], marks))) +
        labelGap;
  const [first, second] = sides.up;
  const plotLeft = room.left + (first ? width(first) : 0);
  const plotRight = room.right - (second ? width(second) : 0);
  const free = {
    ...room,
    left: plotLeft,
    right: Math.max(plotLeft + 10, plotRight),
    top: room.top + 6,
  };
  const names = sides.across === "categories" ? categoriesOf(picture) : [];
  const belowAt = (base: number) =>
    sides.across === "categories"
      ? categoriesBelow(sides, names, free, base)
      : figuresBelow(sides, free, base);
  const bottom = Math.max(free.top + 10, free.bottom - belowAt(0).height);
  const plot = { ...free, bottom };
  const below = belowAt(bottom);
  const scales = sides.up.map((side) => scaleOf(side, [plot.bottom, plot.top], marks));
  const drawn = sides.up.flatMap((side, index) => {
    const up = scales[index];
    return up ? seriesOn(side, { across: below, up, isLying: false, blanks: picture.blanks }) : [];
  });
  const [up, other] = scales;
  const base = up ? Math.min(Math.max(up.base, plot.top), plot.bottom) : plot.bottom;
  return {
    plot,
    legend,
    series: drawn,
    words: [
      ...words,
      ...below.words,
      ...(first && up ? labelsOf(first, up, plot.left - labelGap, "end") : []),
      ...(second && other ? labelsOf(second, other, plot.right + labelGap, "start") : []),
    ],
    strokes: [
      ...(first?.axis?.hasLines !== false && up ? gridOf(up, plot) : []),
      ...below.strokes,
      { is: "axis", path: `M${place(plot.left)},${place(base)}H${place(plot.right)}` },
    ],
  };
}

/** Bars that lie: categories one above another, figures below them. */
function lying(picture: ChartPicture, sides: Sides, { room, words, legend }: Around): Plotted {
  const names = categoriesOf(picture);
  const [side] = sides.up;
  const third = (room.right - room.left) / 3;
  const left = room.left + (sides.acrossAxis?.isHidden ? 0 : besideBars(names, third) + labelGap);
  const plot = { ...room, left, right: room.right - 12, bottom: room.bottom - 20 };
  const beside = categoriesBeside(sides, names, plot, third);
  const up = side && scaleOf(side, [plot.left, plot.right], marksFor(plot.right - left, 62));
  const labels = (side?.axis?.isHidden ? [] : (up?.ticks ?? [])).map(({ at, label }): Words => ({
    x: at,
    y: plot.bottom + 16,
    text: label,
    anchor: "middle",
    size: usual,
  }));
  const grid = (up?.ticks ?? []).map(({ at }): Stroke => ({
    is: "grid",
    path: `M${place(at)},${place(plot.top)}V${place(plot.bottom)}`,
  }));
  const base = up?.base ?? plot.left;
  return {
    plot,
    legend,
    words: [...words, ...beside.words, ...labels],
    strokes: [
      ...(side?.axis?.hasLines === false ? [] : grid),
      { is: "axis", path: `M${place(base)},${place(plot.top)}V${place(plot.bottom)}` },
    ],
    series:
      side && up
        ? seriesOn(side, { across: beside, up, isLying: true, blanks: picture.blanks })
        : [],
  };
}

type Plotted = Omit<Drawing, "width" | "height">;

/** @param picture with what its cells hold now; width and height in pixels */
export function draw(picture: ChartPicture, width: number, height: number): Drawing {
  const sides = sidesOf(picture);
  const outside = around(picture, sides, width, height);
  const plotted = sides.isLying ? lying(picture, sides, outside) : upright(picture, sides, outside);
  const words = plotted.words.filter(
    ({ text, x, y }) => text.trim() !== "" && Number.isFinite(x) && Number.isFinite(y),
  );
  return { width, height, ...plotted, words };
}
