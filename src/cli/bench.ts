/**
 * npm run bench: every budget, as ratios within this one run, told here and kept in .bench/.
 *   -- partner page        only the measures whose names hold one of these words
 *   -- --against COMMIT    the same in the tree as it was at a commit, by turns
 *   -- --write             puts the table into tests/measured/cost.md too
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { compared } from "./bench/against";
import { measuresNamed } from "./bench/measures";
import { quote } from "./bench/quote";
import { comparison, isWithin, report } from "./bench/report";

const root = fileURLToPath(new URL("../..", import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { against: { type: "string" }, write: { type: "boolean", default: false } },
});
const measures = measuresNamed(positionals);

function tell(name: string, text: string): void {
  mkdirSync(join(root, ".bench"), { recursive: true });
  writeFileSync(join(root, `.bench/${name}.md`), text);
  console.log(text);
  if (values.write) quote(root, name, text);
}

if (values.against === undefined) {
  const figures = [];
  for (const measure of measures) figures.push(...(await measure.run(join(root, "dist"))));
  tell("figures", report(figures));
  if (!figures.every(isWithin)) process.exitCode = 1;
} else {
  tell("against", comparison(values.against, compared(root, values.against, measures)));
}
