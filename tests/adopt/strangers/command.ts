/**
 * npm run strangers: how well logbooks of strangers are read, by kind.
 *   -- --books 400   of each kind, 200 unless told
 *   -- --from 1000   another first seed
 *   -- --another     under the headings that another hand wrote later; -- --third of a third hand;
 *                    -- --fourth of a fourth, who had seen neither the others' nor the words in use;
 *                    -- --fifth of a fifth, likewise; -- --sixth of a sixth, who had seen the words;
 *                    -- --seventh of a seventh, who had seen none
 *   -- --nonsense    with three headings of ten replaced by words that mean nothing, and of these columns
 *                    alone; their units are dropped, or stay with -- --units
 *   -- --misses      what was read wrongly or left open
 *   -- --write       puts the table into tests/measured/strangers.md too
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { kinds } from "./book";
import { measureKind, type Measured } from "./measure";

const { values } = parseArgs({
  options: {
    books: { type: "string", default: "200" },
    from: { type: "string", default: "1" },
    another: { type: "boolean", default: false },
    third: { type: "boolean", default: false },
    fourth: { type: "boolean", default: false },
    fifth: { type: "boolean", default: false },
    sixth: { type: "boolean", default: false },
    seventh: { type: "boolean", default: false },
    nonsense: { type: "boolean", default: false },
    units: { type: "boolean", default: false },
    misses: { type: "boolean", default: false },
    write: { type: "boolean", default: false },
  },
});

const percent = (part: number, { columns }: Measured): string =>
  `${((100 * part) / columns).toFixed(2)} %`;

const wanted: Readonly<Record<string, string>> = {
  ordinary: "99 %",
  untidy: "96 %",
  "other languages": "90 %",
  "odd layouts": "85 %",
};

const lines = [
  "| logbooks | columns | right | wanted | left open | wrong | wrong and called sure |",
  "| --- | --- | --- | --- | --- | --- | --- |",
];
const hand =
  (["another", "third", "fourth", "fifth", "sixth", "seventh"] as const).find(
    (each) => values[each],
  ) ?? "first";
const nonsense = values.nonsense ? { inHundred: 30, keepsUnits: values.units } : undefined;
for (const kind of kinds) {
  const found = measureKind(kind, Number(values.books), Number(values.from), hand, nonsense);
  lines.push(
    `| ${kind} | ${String(found.columns)} | ${percent(found.right, found)} | ${wanted[kind] ?? ""} | ${percent(found.open, found)} | ${percent(found.wrong, found)} | ${percent(found.wrongAndSure, found)} |`,
  );
  if (values.misses)
    for (const { book, heading, wanted: is, got, isSure } of found.misses)
      console.log(
        `${kind} ${String(book.seed)} ${book.language}, ${book.layout}: "${heading}" is ${is}, read as ${got}${isSure ? ", SURE" : ""}`,
      );
}
console.log(lines.join("\n"));

if (values.write) {
  const path = fileURLToPath(new URL("../../measured/strangers.md", import.meta.url));
  const [before = "", , after = ""] = readFileSync(path, "utf8").split(/<!-- \/?table -->/);
  writeFileSync(path, `${before}<!-- table -->\n\n${lines.join("\n")}\n\n<!-- /table -->${after}`);
}
