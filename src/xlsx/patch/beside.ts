/** What hangs on cells goes with them to other cells: links, notes with their boxes, threads of comments. */
import type { Place } from "../../sheet/area";
import { cellName } from "../../sheet/cell-name";
import { splice } from "../../sheet/formula/splice";
import { readCellName } from "../cell-address";
import { relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { targetOf } from "../package/relationships";
import { threadParts } from "../read/attached";
import { attribute } from "../xml/scan";
import { withAttribute } from "../xml/tag";
import { childOf, childrenOf, type Node, readTree } from "../xml/tree";
import { type Placed, within } from "./frame";

export interface Move {
  readonly from: Place;
  readonly to: Place;
}

type WhereTo = (row: number, column: number) => Place | undefined;

function whereTo(moves: readonly Move[]): WhereTo {
  const known = new Map(moves.map(({ from, to }) => [cellName(from.row, from.column), to]));
  return (row, column) => known.get(cellName(row, column));
}

/** The tags of elements that name a cell which moves. */
function retagged(text: string, nodes: readonly Node[], where: WhereTo) {
  return nodes.flatMap(({ start, openEnd: end, attributes }) => {
    const place = readCellName(attribute({ attributes }, "ref") ?? "");
    const to = place && where(place.row, place.column);
    if (!to) return [];
    return [
      {
        start,
        end,
        text: withAttribute(text.slice(start, end), "ref", cellName(to.row, to.column)),
      },
    ];
  });
}

/** A box stands where its cell stands: it goes as far as that goes. This old kind of part need not be well-formed. */
function movedBox(box: string, where: WhereTo): string {
  const row = /<x:Row>\s*(\d+)\s*<\/x:Row>/.exec(box);
  const column = /<x:Column>\s*(\d+)\s*<\/x:Column>/.exec(box);
  const to = row && column && where(Number(row[1]), Number(column[1]));
  if (!to) return box;
  const down = to.row - Number(row[1]);
  const across = to.column - Number(column[1]);
  return box
    .replace(row[0], `<x:Row>${String(to.row)}</x:Row>`)
    .replace(column[0], `<x:Column>${String(to.column)}</x:Column>`)
    .replace(/<x:Anchor>([^<]*)<\/x:Anchor>/, (whole, written: string) => {
      const edges = written.split(",").map(Number);
      if (edges.length !== 8 || edges.some(Number.isNaN)) return whole;
      const moved = edges.map((edge, index) =>
        Math.max(0, edge + (index % 4 === 0 ? across : index % 4 === 2 ? down : 0)),
      );
      return `<x:Anchor>${moved.join(", ")}</x:Anchor>`;
    });
}

function moveBoxes(file: Package, sheetPart: string, where: WhereTo): void {
  const part = targetOf(file, sheetPart, relationshipTypes.legacyDrawing);
  if (part === undefined || !file.has(part)) return;
  const text = file.need(part);
  const moved = text.replace(/<v:shape\b[\s\S]*?<\/v:shape>/g, (box) => movedBox(box, where));
  if (moved !== text) file.set(part, moved);
}

function moveIn(
  file: Package,
  part: string,
  nodesIn: (root: Node) => readonly Node[],
  where: WhereTo,
) {
  if (!file.has(part)) return;
  const text = file.need(part);
  const changes = retagged(text, nodesIn(readTree(part, text)), where);
  if (changes.length > 0) file.set(part, splice(text, changes));
}

/** Changes the parts beside the sheet's own, and returns what is to change in that. */
export function movedBeside(
  file: Package,
  sheetPart: string,
  text: string,
  frame: Node,
  moves: readonly Move[],
): Placed[] {
  if (moves.length === 0) return [];
  const where = whereTo(moves);
  const notes = targetOf(file, sheetPart, relationshipTypes.comments);
  if (notes !== undefined) {
    moveIn(file, notes, (root) => childrenOf(childOf(root, "commentList"), "comment"), where);
  }
  for (const part of threadParts(file, sheetPart)) {
    moveIn(file, part, (root) => childrenOf(root, "threadedComment"), where);
  }
  moveBoxes(file, sheetPart, where);
  const links = childrenOf(childOf(frame, "hyperlinks"), "hyperlink");
  return retagged(text, links, where).map(within);
}
