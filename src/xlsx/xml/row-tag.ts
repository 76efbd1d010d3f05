/** The tag of a row with another height, or hidden. */
import { withAttribute } from "./tag";

export const withHidden = (tag: string, isHidden: boolean, wasHidden: boolean): string =>
  isHidden === wasHidden ? tag : withAttribute(tag, "hidden", isHidden ? "1" : undefined);

export const withHeight = (tag: string, points: number | undefined): string =>
  points === undefined
    ? tag
    : withAttribute(withAttribute(tag, "ht", String(points)), "customHeight", "1");
