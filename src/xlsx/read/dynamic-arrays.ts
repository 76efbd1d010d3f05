/**
 * Which cell mark (cm) says "this formula spills by itself": the metadata part lists what each number
 * means (MS-XLSX 2.2.4.1: a future metadata block of type XLDAPR with fDynamic set).
 */
import { relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { targetOf } from "../package/relationships";
import { attribute, count, flag } from "../xml/scan";
import { childOf, childrenOf, descendants, type Node, readTree } from "../xml/tree";

const dynamicType = "XLDAPR";

function dynamicBlocks(root: Node): Set<number> {
  const list = childrenOf(root, "futureMetadata").find(
    (node) => attribute(node, "name") === dynamicType,
  );
  const blocks = childrenOf(list, "bk").map((block) =>
    descendants(block, "dynamicArrayProperties").some((node) => flag(node, "fDynamic")),
  );
  return new Set(blocks.flatMap((isDynamic, index) => (isDynamic ? [index] : [])));
}

const none: ReadonlySet<number> = new Set();

/** The marks, counted from 1. */
export function dynamicMarks(file: Package, workbookPart: string): ReadonlySet<number> {
  const part = targetOf(file, workbookPart, relationshipTypes.metadata);
  if (part === undefined) return none;
  return file.parsed(part, "marks", (text) => marksIn(readTree(part, text))) ?? none;
}

function marksIn(root: Node): ReadonlySet<number> {
  const types = childrenOf(childOf(root, "metadataTypes"), "metadataType");
  const type = types.findIndex((node) => attribute(node, "name") === dynamicType) + 1;
  const dynamic = dynamicBlocks(root);
  const marks = childrenOf(childOf(root, "cellMetadata"), "bk").flatMap((block, index) => {
    const isDynamic = childrenOf(block, "rc").some(
      (record) => count(record, "t") === type && dynamic.has(count(record, "v")),
    );
    return isDynamic ? [index + 1] : [];
  });
  return new Set(marks);
}
