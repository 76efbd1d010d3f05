/** One cell of a plan: the one place where they are made. */
import { address } from "../../sheet/address";
import type { Block, Content } from "../../sheet/port";
import type { PlannedCell } from "./plan";
import { contentText } from "./preview-text";

export interface CellParts {
  readonly block: Block;
  readonly heading: string;
  readonly content: Content;
  /** What is there now, as text; left out: nothing. */
  readonly now?: string;
  /** As it will be shown; left out: as the content reads in this number format. */
  readonly shown?: string;
  readonly format?: string | undefined;
  /** What is there now would be lost. */
  readonly isLost?: boolean;
}

export const plannedCell = ({
  block,
  heading,
  content,
  now = "",
  format,
  shown = contentText(content, format),
  isLost = false,
}: CellParts): PlannedCell => ({
  block,
  address: address(block),
  heading,
  now,
  content,
  shown,
  mustConfirm: isLost,
});
