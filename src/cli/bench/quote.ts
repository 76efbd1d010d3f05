/** The table of a run in tests/measured/cost.md, in place of the one before. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** @param name of the marks that the table stands between */
export function quote(root: string, name: string, table: string): void {
  const path = join(root, "tests/measured/cost.md");
  const text = readFileSync(path, "utf8");
  const [begin, end] = [`<!-- bench: ${name} -->`, `<!-- bench: end of ${name} -->`];
  const [from, to] = [text.indexOf(begin), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`tests/measured/cost.md has no place for the ${name}`);
  writeFileSync(path, `${text.slice(0, from)}${begin}\n\n${table.trim()}\n\n${text.slice(to)}`);
}
