/** Notes beside cells. Threaded comments keep a plain copy there, which is not a note of its own. */
import { readCellName } from "../cell-address";
import type { Note } from "../model";
import { relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { targetOf } from "../package/relationships";
import { decodeString } from "../xml/escape";
import { attribute } from "../xml/scan";
import { childOf, childrenOf, type Node, readTree } from "../xml/tree";

const runs = (text: Node): Node[] => [
  ...childrenOf(text, "t"),
  ...childrenOf(text, "r").flatMap((run) => childrenOf(run, "t")),
];

export function readNotes(file: Package, sheetPart: string): Note[] {
  const part = targetOf(file, sheetPart, relationshipTypes.comments);
  if (part === undefined) return [];
  return file.needParsed(part, "notes", (text) => notesIn(readTree(part, text)));
}

function notesIn(root: Node): Note[] {
  const list = childOf(root, "commentList");
  return childrenOf(list, "comment").flatMap((node) => {
    const place = readCellName(attribute(node, "ref") ?? "");
    const text = childOf(node, "text");
    if (!place || !text) return [];
    return [
      {
        ...place,
        text: decodeString(
          runs(text)
            .map((run) => run.text)
            .join(""),
        ),
      },
    ];
  });
}
