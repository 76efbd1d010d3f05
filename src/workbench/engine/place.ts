export type { CellPlace } from "../../workbook/area";
