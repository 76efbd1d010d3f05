/** The names by which the parts of a workbook know each other (ECMA-376 part 1, transitional; MS-XLSX). */
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

export const namespaces = {
  main: "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
  relationships: office,
  packageRelationships: "http://schemas.openxmlformats.org/package/2006/relationships",
  contentTypes: "http://schemas.openxmlformats.org/package/2006/content-types",
  drawing: "http://schemas.openxmlformats.org/drawingml/2006/main",
  chart: "http://schemas.openxmlformats.org/drawingml/2006/chart",
  sheetDrawing: "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
  dynamicArrays: "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray",
  webExtensionPanes: "http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11",
  webExtension: "http://schemas.microsoft.com/office/webextensions/webextension/2010/11",
} as const;

export const strictMarks = [
  "http://purl.oclc.org/ooxml/spreadsheetml/main",
  "http://purl.oclc.org/ooxml/officeDocument/relationships/officeDocument",
];

export const relationshipTypes = {
  workbook: `${office}/officeDocument`,
  worksheet: `${office}/worksheet`,
  chartSheet: `${office}/chartsheet`,
  sharedStrings: `${office}/sharedStrings`,
  styles: `${office}/styles`,
  theme: `${office}/theme`,
  calculationChain: `${office}/calcChain`,
  metadata: `${office}/sheetMetadata`,
  table: `${office}/table`,
  queryTable: `${office}/queryTable`,
  comments: `${office}/comments`,
  threadedComments: "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
  legacyDrawing: `${office}/vmlDrawing`,
  drawing: `${office}/drawing`,
  chart: `${office}/chart`,
  /** MS-OWEXML 2.1: the panes of add-ins that open with the file. */
  webExtensionPanes: "http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes",
  webExtension: "http://schemas.microsoft.com/office/2011/relationships/webextension",
} as const;

export const contentTypes = {
  worksheet: "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml",
  table: "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml",
  comments: "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml",
  styles: "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml",
  metadata: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml",
  legacyDrawing: "application/vnd.openxmlformats-officedocument.vmlDrawing",
  drawing: "application/vnd.openxmlformats-officedocument.drawing+xml",
  chart: "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
  webExtensionPanes: "application/vnd.ms-office.webextensiontaskpanes+xml",
  webExtension: "application/vnd.ms-office.webextension+xml",
} as const;
