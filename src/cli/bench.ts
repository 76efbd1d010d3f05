/** npm run bench: every budget, as ratios within this one run. */
import { coreRow } from "./bench/core-row";
import { workbenchCells } from "./bench/workbench-cells";

console.table([...(await coreRow()), ...(await workbenchCells())]);
