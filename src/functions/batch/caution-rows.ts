/** The cautions that fit, as the last rows of a spilled table, and where the others stand. */
import { cautions, cautionsFor, type Work } from "../../core/batch/cautions";
import type { ResultTable } from "../answer";

const others = `All ${String(cautions.length)} cautions: on the help page Cautions, and in the pane's task Batch.`;

export const cautionRows = (work: Work): ResultTable =>
  [...cautionsFor(work), others].map((words) => ["Caution", words, ""]);
