/**
 * The texts of a new function: its entry, its test, and the catalogue with it. Nothing here claims to
 * work: the entry throws and its test fails until both are written.
 */

/** Where a function goes. `family` is its folder, `file` its file's name without ending. */
export interface NewFunction {
  readonly id: string;
  readonly family: string;
  readonly file: string;
}

export const entryText = ({
  id,
}: NewFunction): string => `import { worksheetFunction } from "../define";

// Its plain-formula twin goes into src/partner/twins: see its README.
export const ${id} = worksheetFunction(
  "${id}",
  "", // One line of at most 120 characters: what it gives, with its unit.
  {
    // The arguments in the order they are typed, each with its reader: see ../arguments, ../words,
    // and ../common for those that other functions share. Limits stand in core/reference/limits.
  },
  () => {
    // Call the core here; the arithmetic belongs in src/core, in a file of its own.
    throw new Error("${id} is not written yet");
  },
  {
    result: "", // the unit of the result
    equation: "", // with argument names in braces: {molarity} * {volume}
    notes: [], // what it is for, and what it leaves out
    // Worked out by hand or published; never copied from what the code gave.
    example: { formula: "", gives: "" },
    sources: [], // ids from core/reference/sources
  },
);
`;

export const testText = ({
  id,
}: NewFunction): string => `import { describe, expect, it } from "vitest";
import { figure } from "../outcome";

describe("${id}", () => {
  it("agrees with a figure that was published or worked out by hand", () => {
    // Name the source of the figure beside it. Until then this fails.
    expect(figure("${id}")).toBe("a figure with its source");
  });
});
`;

const importLine = /^import \{ [A-Z]+ \} from "\.\/([a-z/-]+)";$/;

/** The ids a catalogue's text lists. */
export const idsIn = (catalogue: string): string[] =>
  [...catalogue.matchAll(/^ {2}([A-Z]+),$/gm)].map(([, id = ""]) => id);

const inserted = (lines: readonly string[], at: number, line: string): string[] => [
  ...lines.slice(0, at),
  line,
  ...lines.slice(at),
];

/** The catalogue's text with a function at its end, and its import in its place by name. */
export function withEntry(catalogue: string, { id, family, file }: NewFunction): string {
  const path = `${family}/${file}`;
  const lines = catalogue.split("\n");
  const isAfter = (line: string): boolean => (importLine.exec(line)?.[1] ?? "") > path;
  const places = lines.flatMap((line, place) => (isAfter(line) ? [place] : []));
  const afterImports = lines.map((line) => line.startsWith("import ")).lastIndexOf(true) + 1;
  const imported = inserted(lines, places[0] ?? afterImports, `import { ${id} } from "./${path}";`);
  const start = imported.findIndex((line) => /^export const catalogue\b/.test(line));
  const end = imported.indexOf("];", start);
  if (start === -1 || end === -1) throw new Error("the catalogue's list was not found");
  return inserted(imported, end, `  ${id},`).join("\n");
}

/** The text of the list of names with a function at its end. */
export function withName(names: string, { id }: NewFunction): string {
  const lines = names.split("\n");
  const end = lines.findIndex((line) => line.startsWith("} as const satisfies"));
  if (end === -1) throw new Error("the list of names was not found");
  return inserted(lines, end, `  ${id}: "cell", // "table" if it spills`).join("\n");
}
