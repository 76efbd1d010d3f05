/** What the part of a sheet may hold, and which attributes of it say where something stands. Data. */

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/).filter(Boolean));

/** ECMA-376 part 1, 18.3.1.99; what is not among these may name cells that nobody here knows. */
export const knownInSheet = words(`
  sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges
  scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr
  conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter
  rowBreaks colBreaks customProperties cellWatches ignoredErrors drawing legacyDrawing
  legacyDrawingHF drawingHF picture oleObjects controls tableParts extLst AlternateContent
`);

/** What stands in the list of extensions of a sheet or a table. */
export const knownExtensions = words(`
  conditionalFormattings dataValidations sparklineGroups slicerList timelineRefs protectedRanges
  ignoredErrors table
`);

export interface PlaceRule {
  readonly attribute: string;
  /** Must it stand somewhere, or does it go with its cells? */
  readonly gone: "near" | "drop";
}

const rule = (attribute: string, gone: PlaceRule["gone"]): PlaceRule => ({ attribute, gone });

export const placesOf: ReadonlyMap<string, readonly PlaceRule[]> = new Map([
  ["dimension", [rule("ref", "near")]],
  ["sheetView", [rule("topLeftCell", "near")]],
  ["customSheetView", [rule("topLeftCell", "near")]],
  ["pane", [rule("topLeftCell", "near")]],
  ["selection", [rule("activeCell", "near"), rule("sqref", "near")]],
  ["protectedRange", [rule("sqref", "drop")]],
  ["scenarios", [rule("sqref", "near")]],
  ["inputCells", [rule("r", "drop")]],
  ["autoFilter", [rule("ref", "drop")]],
  ["sortState", [rule("ref", "drop")]],
  ["sortCondition", [rule("ref", "drop")]],
  ["mergeCell", [rule("ref", "drop")]],
  ["hyperlink", [rule("ref", "drop")]],
  ["cellWatch", [rule("r", "drop")]],
  ["ignoredError", [rule("sqref", "drop")]],
]);

/** Lists that are nothing without what is in them. */
export const emptyLists = words(`
  protectedRanges mergeCells hyperlinks cellWatches ignoredErrors rowBreaks colBreaks dataValidations
  conditionalFormattings sparklines sparklineGroup sparklineGroups ext extLst scenario cols
`);
