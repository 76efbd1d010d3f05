/** Pictures, charts and shapes on the sheet: they stand where their cells are. */
import { splice } from "../../../../sheet/formula/splice";
import type { Package } from "../../../package/package";
import { attribute } from "../../../xml/scan";
import { descendants, readTree } from "../../../xml/tree";
import { type Fastened, movedAnchor } from "../anchors";
import type { Lines } from "../lines";

const fastenings: Readonly<Record<string, Fastened>> = {
  oneCell: "oneCell",
  absolute: "absolute",
};

export function moveDrawing(file: Package, part: string, lines: Lines): void {
  const text = file.need(part);
  const root = readTree(part, text);
  const changes = [
    ...descendants(root, "twoCellAnchor").flatMap((node) =>
      movedAnchor(node, lines, fastenings[attribute(node, "editAs") ?? ""] ?? "twoCell"),
    ),
    ...descendants(root, "oneCellAnchor").flatMap((node) => movedAnchor(node, lines, "oneCell")),
  ];
  if (changes.length > 0) file.set(part, splice(text, changes));
}
