/** Which parts a part leads to, and how another is added or taken away. */
import { refuse } from "../problem";
import { escapeAttribute } from "../xml/escape";
import { attribute } from "../xml/scan";
import { prefixed } from "../xml/tag";
import { childrenOf, type Node, readTree } from "../xml/tree";
import { namespaces } from "./names";
import type { Package } from "./package";

export interface Relationship {
  readonly id: string;
  readonly type: string;
  /** A part's name, without a slash before it; for what lies outside the file, as written. */
  readonly target: string;
  readonly isOutside: boolean;
}

/** xl/worksheets/_rels/sheet1.xml.rels for xl/worksheets/sheet1.xml; _rels/.rels for the file. */
export function relationshipPart(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** Percent escapes read; one that is broken stays as it is. */
function unescaped(target: string): string {
  try {
    return decodeURIComponent(target);
  } catch {
    return target;
  }
}

/** Where a target leads, from the folder of its part. */
function resolved(part: string, target: string): string {
  const from = target.startsWith("/") ? [] : part.split("/").slice(0, -1);
  const steps = [...from];
  for (const step of unescaped(target).split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  }
  return steps.join("/");
}

function relationship(part: string, node: Node): Relationship {
  const isOutside = attribute(node, "TargetMode") === "External";
  const target = attribute(node, "Target") ?? "";
  return {
    id: attribute(node, "Id") ?? "",
    type: attribute(node, "Type") ?? "",
    target: isOutside ? target : resolved(part, target),
    isOutside,
  };
}

/** `part` is "" for the file itself. */
export function relationshipsOf(file: Package, part: string): readonly Relationship[] {
  const name = relationshipPart(part);
  const read = (text: string) =>
    childrenOf(readTree(name, text), "Relationship").map((node) => relationship(part, node));
  return file.parsed(name, "relationships", read) ?? [];
}

/** The part a relationship of that type leads to. */
export const targetOf = (file: Package, part: string, type: string): string | undefined =>
  relationshipsOf(file, part).find((each) => each.type === type && !each.isOutside)?.target;

/** How the part at `target` is written from the folder of `part`. */
function written(part: string, target: string): string {
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  return target.startsWith(folder) ? target.slice(folder.length) : `/${target}`;
}

const empty = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${namespaces.packageRelationships}"></Relationships>`;

/** Adds a relationship and returns its id. */
export function addRelationship(file: Package, part: string, type: string, target: string): string {
  const name = relationshipPart(part);
  const text = file.text(name) ?? empty;
  const root = readTree(name, text);
  const taken = new Set(childrenOf(root, "Relationship").map((node) => attribute(node, "Id")));
  let number = taken.size + 1;
  while (taken.has(`rId${String(number)}`)) number += 1;
  const id = `rId${String(number)}`;
  const tag = prefixed(root.prefix, "Relationship");
  const added = `<${tag} Id="${id}" Type="${type}" Target="${escapeAttribute(written(part, target))}"/>`;
  if (root.isEmptyTag) refuse({ code: "damaged", part: name, detail: "it leads nowhere" });
  file.set(name, text.slice(0, root.closeStart) + added + text.slice(root.closeStart));
  return id;
}

/** Takes away the relationships of a part that lead to another. */
export function removeRelationships(file: Package, part: string, target: string): void {
  const name = relationshipPart(part);
  const text = file.text(name);
  if (text === undefined) return;
  let kept = text;
  for (const node of childrenOf(readTree(name, text), "Relationship").reverse()) {
    if (relationship(part, node).target.toLowerCase() !== target.toLowerCase()) continue;
    kept = kept.slice(0, node.start) + kept.slice(node.end);
  }
  file.set(name, kept);
}
