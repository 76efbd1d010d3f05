/** Makes the files of a new worksheet function under a checkout, or says why not. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { parseArgs } from "node:util";
import { nameRefusal } from "./name";
import { entryText, idsIn, type NewFunction, testText, withEntry, withName } from "./texts";

export interface Created {
  readonly text: string;
  readonly isDone: boolean;
}

const refused = (text: string): Created => ({ text, isDone: false });

const usualFamily = "titration";
const isFileName = (text: string): boolean => /^[a-z]+(-[a-z]+)*$/.test(text);

/** `cells` holds the readers of cells, `twins` the plain formulas: neither holds functions. */
const notFamilies = new Set(["cells", "twins"]);

const familiesIn = (functions: string): string[] =>
  readdirSync(functions, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !notFamilies.has(entry.name))
    .map((entry) => entry.name);

function given(args: readonly string[]) {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { family: { type: "string" }, file: { type: "string" } },
    allowPositionals: true,
    strict: false,
  });
  const text = (value: unknown): string | undefined =>
    typeof value === "string" ? value : undefined;
  return {
    id: (positionals[0] ?? "").toUpperCase(),
    family: text(values.family) ?? usualFamily,
    file: text(values.file),
  };
}

const nextSteps = ({ id }: NewFunction, made: readonly string[]): string => `Made for ${id}:
${made.map((path) => `  ${path}`).join("\n")}
Its tests fail until it is written. Next:
  1. Put the arithmetic in src/core, with a test that names where its figures come from.
  2. Fill in the entry: summary, arguments, the call of the core, equation, notes, example, sources.
  3. Give each new argument a good value in tests/functions/good-arguments.ts, and add the function to
     tests/rules/public-interface.ts.
  4. npm run try -- '=TITRE.${id}(...)', then npm run docs and npm run check.
A name once published never changes, nor does the order of its arguments.`;

/** @param root the top of the checkout */
export function createFunction(args: readonly string[], root: string): Created {
  const { id, family, file = id.toLowerCase() } = given(args);
  const functions = join(root, "src/functions");
  const cataloguePath = "src/functions/catalogue.ts";
  const namesPath = "src/functions/names.ts";
  const catalogue = readFileSync(join(root, cataloguePath), "utf8");
  const names = readFileSync(join(root, namesPath), "utf8");
  const refusal = nameRefusal(id, idsIn(catalogue));
  if (refusal !== undefined) return refused(refusal);
  const families = familiesIn(functions);
  if (!families.includes(family)) {
    return refused(`There is no family ${family}: --family is one of ${families.join(", ")}.`);
  }
  if (!isFileName(file)) {
    return refused("--file is the words of the name with hyphens between: drying-time.");
  }
  const wanted: NewFunction = { id, family, file };
  const texts: Readonly<Record<string, string>> = {
    [`src/functions/${family}/${file}.ts`]: entryText(wanted),
    [`tests/functions/${family}/${file}.test.ts`]: testText(wanted),
  };
  const there = Object.keys(texts).find((path) => existsSync(join(root, path)));
  if (there !== undefined) return refused(`${there} is there already: nothing was written.`);
  const all = {
    ...texts,
    [namesPath]: withName(names, wanted),
    [cataloguePath]: withEntry(catalogue, wanted),
  };
  for (const [path, text] of Object.entries(all)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return { text: nextSteps(wanted, Object.keys(all)), isDone: true };
}
