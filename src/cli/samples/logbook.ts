/** logbook.xlsx: what the workbench opens with. */
import { sampleLogbook } from "../../workbook/sample/logbook";
import { sampleOf } from "./sample";

export const logbook = sampleOf("logbook.xlsx", sampleLogbook);
