/** What a grid does not show and the file keeps: told, so that nobody thinks it lost. */
import type { Kept, KeptKind } from "../model";
import type { Package } from "../package/package";
import { relationshipsOf } from "../package/relationships";
import { childOf, childrenOf, descendants, type Node } from "../xml/tree";

type Counts = Partial<Record<KeptKind, number>>;

/** The last step of a relationship's type says what it leads to. */
const lastStep = (type: string): string => type.slice(type.lastIndexOf("/") + 1);

const byRelationship: ReadonlyMap<string, KeptKind> = new Map([
  ["chart", "charts"],
  ["chartEx", "charts"],
  ["image", "images"],
  ["threadedComment", "threaded comments"],
  ["slicer", "slicers"],
  ["timeline", "timelines"],
  ["pivotTable", "pivot tables"],
  ["oleObject", "embedded objects"],
  ["package", "embedded objects"],
  ["ctrlProp", "form controls"],
  ["control", "form controls"],
  ["queryTable", "outside data"],
]);

const ofWorkbook: readonly (readonly [RegExp, KeptKind])[] = [
  [/^xl\/externalLinks\/[^/]+\.xml$/i, "links to other workbooks"],
  [/^xl\/connections\.xml$/i, "outside data"],
  [/^xl\/vbaProject\.bin$/i, "macros"],
  [/^xl\/model\//i, "data model"],
  [/^customXml\/item\d+\.xml$/i, "custom XML"],
  [/^xl\/webextensions\/webextension\d*\.xml$/i, "web extensions"],
  [/^_xmlsignatures\/[^/]+\.xml$/i, "digital signatures"],
];

/** What a part leads to, by kind; returns the drawings it leads to. */
function addRelated(file: Package, part: string, counts: Counts): Set<string> {
  const drawings = new Set<string>();
  for (const { type, target, isOutside } of relationshipsOf(file, part)) {
    const step = lastStep(type);
    const kind = byRelationship.get(step);
    if (kind) counts[kind] = (counts[kind] ?? 0) + 1;
    if (step === "drawing" && !isOutside) drawings.add(target);
  }
  return drawings;
}

function addDrawn(file: Package, drawings: ReadonlySet<string>, counts: Counts): void {
  const known = () => (counts.charts ?? 0) + (counts.images ?? 0);
  const before = known();
  for (const drawing of drawings) addRelated(file, drawing, counts);
  // Shapes and text boxes are parts of the drawing itself.
  if (drawings.size > 0 && known() === before) counts.drawings = drawings.size;
}

const listed = (frame: Node, list: string, item: string): number =>
  childrenOf(frame, list).flatMap((node) => childrenOf(node, item)).length;

function inFrame(frame: Node): Counts {
  const extension = childOf(frame, "extLst");
  const extended = (item: string) => (extension ? descendants(extension, item).length : 0);
  return {
    "conditional formats": listed(frame, "conditionalFormatting", "cfRule") + extended("cfRule"),
    validations: listed(frame, "dataValidations", "dataValidation") + extended("dataValidation"),
    hyperlinks: listed(frame, "hyperlinks", "hyperlink"),
    sparklines: extended("sparkline"),
  };
}

const entries = (counts: Counts, sheet?: string): Kept[] =>
  (Object.entries(counts) as [KeptKind, number][])
    .filter(([, count]) => count > 0)
    .map(([what, count]) => ({ what, count, ...(sheet === undefined ? {} : { sheet }) }));

/** `more` is what the sheet's reader counted itself. */
export function keptOnSheet(
  file: Package,
  sheet: string,
  part: string,
  frame: Node | undefined,
  more: Counts,
): Kept[] {
  const counts: Counts = { ...(frame ? inFrame(frame) : {}), ...more };
  addDrawn(file, addRelated(file, part, counts), counts);
  const threads = counts["threaded comments"] ?? 0;
  if (threads > 0) delete counts.notes;
  return entries(counts, sheet);
}

export function keptInWorkbook(file: Package): Kept[] {
  const { names } = file;
  return entries(
    Object.fromEntries(
      ofWorkbook.map(([pattern, kind]) => [
        kind,
        names.filter((name) => pattern.test(name)).length,
      ]),
    ),
  );
}
