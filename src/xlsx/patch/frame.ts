/** Where in a sheet's part an element belongs: the format gives them an order, and programs insist on it. */
import type { Replacement } from "../../sheet/formula/splice";
import { inserting } from "../xml/insert";
import type { Node } from "../xml/tree";

/** ECMA-376 part 1, 18.3.1.99. */
const sheetOrder =
  "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst".split(
    " ",
  );

/** 18.2.27. */
const workbookOrder =
  "fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr webPublishObjects extLst".split(
    " ",
  );

/** What programs wrap for each other stands where controls do, as far as is seen in files. */
const wrapped = "controls";

function insertedInOrder(order: readonly string[], frame: Node, local: string, xml: string) {
  const place = order.indexOf(local);
  const after = frame.children.find((child) => {
    const known = child.local === "AlternateContent" ? wrapped : child.local;
    return order.indexOf(known) > place;
  });
  return { ...inserting(after?.start ?? frame.closeStart, xml), place };
}

/** A replacement and the place of its element, so that two at one spot come out in order. */
export type Placed = Replacement & { readonly place: number };

export const intoSheet = (frame: Node, local: string, xml: string): Placed =>
  insertedInOrder(sheetOrder, frame, local, xml);

export const intoWorkbook = (root: Node, local: string, xml: string): Placed =>
  insertedInOrder(workbookOrder, root, local, xml);

/** A change inside an element that is there. */
export const within = (replacement: Replacement): Placed => ({ ...replacement, place: 0 });

/** What goes in before an element stands before what changes the element. */
const isChange = ({ start, end }: Placed): number => (start === end ? 0 : 1);

export const inOrder = (changes: readonly Placed[]): Placed[] =>
  [...changes].sort((a, b) => isChange(a) - isChange(b) || a.place - b.place);
