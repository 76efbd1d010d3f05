/** The tag of a row with another height, or hidden. */
import { withAttribute } from "./tag";

export const withHidden = (tag: string, isHidden: boolean, wasHidden: boolean): string =>
  isHidden === wasHidden ? tag : withAttribute(tag, "hidden", isHidden ? "1" : undefined);

export interface Height {
  readonly points: number;
  /** To what stands in the row: programs fit it again when that changes. */
  readonly isFitted: boolean;
}

export const withHeight = (tag: string, height: Height | undefined): string =>
  height === undefined
    ? tag
    : withAttribute(
        withAttribute(tag, "ht", String(height.points)),
        "customHeight",
        height.isFitted ? undefined : "1",
      );
