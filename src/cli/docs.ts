/** npm run docs: makes the generated part of the README. --check only says whether it is up to date. */
import { readFileSync, writeFileSync } from "node:fs";
import { withMadeParts } from "../help/readme";

const path = new URL("../../README.md", import.meta.url);
const written = readFileSync(path, "utf8");
const made = withMadeParts(written);

if (made === written) {
  console.log("README.md is up to date.");
} else if (process.argv.includes("--check")) {
  console.error("README.md does not show the cautions as they are: run `npm run docs`.");
  process.exit(1);
} else {
  writeFileSync(path, made);
  console.log("README.md: the cautions were made anew.");
}
