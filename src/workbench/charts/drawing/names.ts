/** What a series is called. */
import type { ChartPicture } from "../../../xlsx/file-chart";
import type { Named } from "./legend";
import { colourOf, dashOf, markOf } from "./marks";
import { isOfBars } from "./series";

export const nameOf = (text: string | undefined, index: number): string =>
  text === undefined || text.trim() === "" ? `Series ${String(index + 1)}` : text.trim();

const usualWidth = 2;

export const namesIn = ({ groups }: ChartPicture): Named[] =>
  groups
    .flatMap((group) => group.series.map((series) => ({ group, series })))
    .map(({ group, series }, index) => ({
      name: nameOf(series.name?.text, index),
      colour: colourOf(series),
      isBar: isOfBars(group),
      isJoined: series.isJoined,
      mark: markOf(series),
      width: series.width ?? usualWidth,
      dash: dashOf(series),
    }));
