/** A file that opens the pane of an add-in beside it (MS-OWEXML 2.1 and 2.2). */
import { addContentType } from "../package/content-types";
import { contentTypes, namespaces, relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { addRelationship, targetOf } from "../package/relationships";
import { escapeAttribute } from "../xml/escape";

const xml = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export interface AddIn {
  /** As its manifest says: a GUID without braces, and four numbers with points between. */
  readonly id: string;
  readonly version: string;
}

/** Known to the machine itself, as install/ makes it known; not from a shop, and not from a share. */
const extension = ({ id, version }: AddIn): string =>
  `${xml}<we:webextension xmlns:we="${namespaces.webExtension}" id="{${escapeAttribute(id)}}"><we:reference id="${escapeAttribute(id)}" version="${escapeAttribute(version)}" store="developer" storeType="Registry"/><we:alternateReferences/><we:properties><we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/></we:properties><we:bindings/><we:snapshot xmlns:r="${namespaces.relationships}"/></we:webextension>`;

const panes = (relationship: string): string =>
  `${xml}<wetp:taskpanes xmlns:wetp="${namespaces.webExtensionPanes}"><wetp:taskpane dockstate="right" visibility="1" width="350" row="4"><wetp:webextensionref xmlns:r="${namespaces.relationships}" r:id="${relationship}"/></wetp:taskpane></wetp:taskpanes>`;

/** A file that opens a pane already keeps that one. */
export function addPane(file: Package, addIn: AddIn): void {
  if (targetOf(file, "", relationshipTypes.webExtensionPanes) !== undefined) return;
  const shown = file.free((number) => `xl/webextensions/webextension${String(number)}.xml`);
  const list = "xl/webextensions/taskpanes.xml";
  addRelationship(file, "", relationshipTypes.webExtensionPanes, list);
  file.set(list, panes(addRelationship(file, list, relationshipTypes.webExtension, shown)));
  file.set(shown, extension(addIn));
  addContentType(file, list, contentTypes.webExtensionPanes);
  addContentType(file, shown, contentTypes.webExtension);
}
