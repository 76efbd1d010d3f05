/**
 * Room for the strip of news at the foot of the sheet: the cells end above it, and nothing else moves, neither
 * the rows that one may be pointing at nor the names of the sheets.
 */
import type { Page } from "../page";

/** As the style sheet knows it. */
const room = "--news-room";

/** What lies between the strip and the names of the sheets, in pixels. */
const gap = 12;

export function makeRoomForNews({ news, work }: Pick<Page, "news" | "work">): void {
  const tell = (): void => {
    const { height } = news.getBoundingClientRect();
    work.style.setProperty(room, height > 0 ? `${String(Math.ceil(height) + gap)}px` : "0px");
  };
  new ResizeObserver(tell).observe(news);
}
