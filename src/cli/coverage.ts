/**
 * npm run bench:coverage: what the interval and the judgement of replicates do in simulated titrations
 * (`-- --write` puts it into tests/measured/statistics.md).
 */
import { writeFileSync } from "node:fs";
import { format } from "prettier";
import { tables } from "./coverage/tables";

const file = "tests/measured/statistics.md";
const found = tables();
console.log(found);
if (process.argv.includes("--write")) {
  const day = new Date().toISOString().slice(0, 10);
  const head = `# What the statistics can do\n\nWritten by \`npm run bench:coverage -- --write\` on ${day} (seeded: the same on every machine).\n\n`;
  writeFileSync(file, await format(head + found, { parser: "markdown", printWidth: 100 }));
}
