/** Copies of a workbook for somebody without the add-in. The rest of this folder is nobody else's concern. */
export { shareWorkbook, type Shared, type ShareOptions } from "./share";
export type { ShareReport } from "./report";
export { leftWords, reportWords } from "./report-words";
