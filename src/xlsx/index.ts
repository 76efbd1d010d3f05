/** Workbook files: opened, and saved with edits. The rest of this folder is nobody else's concern. */
export { openXlsx } from "./open";
export { patchedXlsx, patchXlsx } from "./patch";
export { newXlsx } from "./new";
export { restructured } from "./structure";
export type { StructuralAct } from "./structure/act";
export { isFileProblem, type FileProblem } from "./problem";
export { sayFile } from "./wording";
export { keptWords } from "./kept-words";
export { isoToSerial, serialToIso } from "./dates";
export type { AddIn } from "./patch/pane";
export type { Content, Dress, Edit, LookChange, SetCell } from "./patch/edits";
export type { Cell, CellValue, DefinedName, Look, Sheet, Validation, Workbook } from "./model";
export type { Area } from "../sheet/area";
export type { Criterion } from "./filter";
