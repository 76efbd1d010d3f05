/** The cautions as the last rows of a spilled table. */
import { cautions } from "../../core/batch/cautions";
import type { ResultTable } from "../define";

export const cautionRows: ResultTable = cautions.map((caution) => ["Caution", caution, ""]);
