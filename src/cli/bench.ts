/** npm run bench: every budget, as ratios within this one run, told here and kept in .bench/. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { coreRow } from "./bench/core-row";
import { openAndSave } from "./bench/open-and-save";
import { pageLoad } from "./bench/page-load";
import { partnerCopy } from "./bench/partner-copy";
import { recheckOfRows } from "./bench/recheck";
import { report } from "./bench/report";
import { sizes } from "./bench/sizes";
import { workbenchCells } from "./bench/workbench-cells";

const root = fileURLToPath(new URL("../..", import.meta.url));

const figures = [
  ...(await coreRow()),
  ...(await workbenchCells()),
  ...(await partnerCopy()),
  ...(await recheckOfRows()),
  ...(await openAndSave()),
  ...sizes(root),
  ...(await pageLoad(root)),
];
const text = report(figures);
mkdirSync(join(root, ".bench"), { recursive: true });
writeFileSync(join(root, ".bench/figures.md"), text);
console.log(text);
if (figures.some(({ isWithin }) => isWithin === false)) process.exitCode = 1;
