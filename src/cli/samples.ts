/**
 * `npm run samples`: makes the workbooks in sample-workbooks/. `-- --check` writes nothing and says
 * whether making them anew gives the same bytes.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { makeSamples } from "./samples/all";

const folder = fileURLToPath(new URL("../../sample-workbooks/", import.meta.url));
const isCheck = process.argv.includes("--check");

const isSame = (path: string, bytes: Uint8Array): boolean =>
  existsSync(path) && readFileSync(path).equals(bytes);

mkdirSync(folder, { recursive: true });
const made = [...(await makeSamples())];
const changed = made.filter(([file, bytes]) => !isSame(folder + file, bytes));
const names = changed.map(([file]) => file).join(", ");

if (changed.length === 0) {
  console.log(`sample-workbooks: ${String(made.length)} files, as made anew byte for byte.`);
} else if (isCheck) {
  console.error(`sample-workbooks is not what is made anew (${names}): run \`npm run samples\`.`);
  process.exitCode = 1;
} else {
  for (const [file, bytes] of changed) writeFileSync(folder + file, bytes);
  console.log(`sample-workbooks: wrote ${names}.`);
}
