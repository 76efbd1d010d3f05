/** npm run bench: every budget, as ratios within this one run. */
import { coreRow } from "./bench/core-row";

console.table(await coreRow());
