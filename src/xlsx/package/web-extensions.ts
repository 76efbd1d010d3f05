/**
 * The parts by which a file opens the pane of an add-in (MS-OWEXML): taken out for somebody who has no
 * add-in. One that a drawing shows stays, since the drawing names it.
 */
import { removeContentType } from "./content-types";
import { relationshipTypes } from "./names";
import type { Package } from "./package";
import { relationshipPart, relationshipsOf, removeRelationships } from "./relationships";

const insideTargets = (file: Package, part: string): string[] =>
  relationshipsOf(file, part).flatMap(({ target, isOutside }) => (isOutside ? [] : [target]));

/** Parts that a part leads to, and those that they lead to. */
function ledTo(file: Package, part: string, found = new Set<string>()): Set<string> {
  if (found.has(part) || !file.has(part)) return found;
  found.add(part);
  for (const target of insideTargets(file, part)) ledTo(file, target, found);
  return found;
}

/** The part whose relationships a part of that name holds. */
const sourceOf = (name: string): string | undefined => {
  const [, folder = "", part] = /^(.*?)_rels\/([^/]*)\.rels$/.exec(name) ?? [];
  return part === undefined ? undefined : folder + part;
};

function removePart(file: Package, part: string): void {
  file.remove(part);
  removeContentType(file, part);
  const relationships = relationshipPart(part);
  if (file.has(relationships)) file.remove(relationships);
}

/** Some programs write no relationship from the pane to what it shows. */
const isExtension = /(?:^|\/)webextensions\/[^/]+\.xml$/i;

/** Returns how many panes the file opened. */
export function removeWebExtensions(file: Package): number {
  const panes = relationshipsOf(file, "").filter(
    ({ type }) => type === relationshipTypes.webExtensionPanes,
  );
  if (panes.length === 0) return 0;
  const parts = new Set(panes.flatMap(({ target }) => [...ledTo(file, target)]));
  for (const name of file.names) if (isExtension.test(name)) parts.add(name);
  const others = file.names.flatMap((name) => {
    const source = sourceOf(name);
    return source === undefined || source === "" || parts.has(source)
      ? []
      : insideTargets(file, source);
  });
  const kept = new Set(others.flatMap((part) => [...ledTo(file, part)]));
  for (const { target } of panes) removeRelationships(file, "", target);
  for (const part of parts) if (!kept.has(part)) removePart(file, part);
  return panes.length;
}
