/**
 * `npm run scenarios`: makes tests/scenarios.xlsx anew; `-- --check` only compares. `-- --read FILE ...`
 * reads workbooks that came back from "Check this Excel" and prints the README's list of what is tested
 * where.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { fileOf } from "./samples/sample";
import { scenariosBook } from "./scenarios/book";
import { reportIn } from "./scenarios/read-back";
import { testedList } from "./scenarios/tested-list";

const path = fileURLToPath(new URL("../../tests/scenarios.xlsx", import.meta.url));
const given = process.argv.slice(2);

function readBack(files: readonly string[]): void {
  try {
    if (files.length === 0) throw new Error("Name the workbook that came back: --read FILE.");
    const missing = files.find((file) => !existsSync(file));
    if (missing !== undefined) throw new Error(`There is no file ${missing}.`);
    console.log(
      testedList(files.map((file) => reportIn(new Uint8Array(readFileSync(file)), file))),
    );
  } catch (refusal) {
    console.error((refusal as Error).message);
    process.exitCode = 1;
  }
}

async function make(): Promise<void> {
  const made = await fileOf(scenariosBook());
  if (existsSync(path) && readFileSync(path).equals(made)) {
    console.log("tests/scenarios.xlsx is up to date.");
  } else if (given.includes("--check")) {
    console.error("tests/scenarios.xlsx is not what is made anew: run `npm run scenarios`.");
    process.exitCode = 1;
  } else {
    writeFileSync(path, made);
    console.log(`tests/scenarios.xlsx: ${String(made.length)} bytes.`);
  }
}

if (given[0] === "--read") readBack(given.slice(1));
else await make();
