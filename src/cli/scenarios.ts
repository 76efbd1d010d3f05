/** `npm run scenarios`: makes tests/scenarios.xlsx anew; `-- --check` only compares. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { fileOf } from "./samples/sample";
import { scenariosBook } from "./scenarios/book";

const path = fileURLToPath(new URL("../../tests/scenarios.xlsx", import.meta.url));
const made = await fileOf(scenariosBook());

if (existsSync(path) && readFileSync(path).equals(made)) {
  console.log("tests/scenarios.xlsx is up to date.");
} else if (process.argv.includes("--check")) {
  console.error("tests/scenarios.xlsx is not what is made anew: run `npm run scenarios`.");
  process.exitCode = 1;
} else {
  writeFileSync(path, made);
  console.log(`tests/scenarios.xlsx: ${String(made.length)} bytes.`);
}
