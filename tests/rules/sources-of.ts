/** Reads the tree for the tests that guard its structure. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));

export interface SourceFile {
  /** Path from the top, with forward slashes: src/core/exact/exact.ts. */
  readonly path: string;
  readonly text: string;
}

export function filesUnder(folder: string, pattern = /\.(ts|tsx)$/): SourceFile[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && pattern.test(entry.name))
    .map((entry) => {
      const path = relative(root, join(entry.parentPath, entry.name));
      return { path, text: readFileSync(join(root, path), "utf8") };
    });
}

/** A chunk's name may stand before the file in `import(...)`. */
const importing = /(?:from\s+|import\s*\(\s*(?:\/\*[^*]*\*\/\s*)?|^\s*import\s+)["']([^"']+)["']/gm;

/** What a file imports: project paths from the top, packages by name. */
export function importsOf(file: SourceFile): string[] {
  return [...file.text.matchAll(importing)].map(([, target = ""]) =>
    target.startsWith(".") ? normalize(join(dirname(file.path), target)) : target,
  );
}

/** The file that an import means: with its ending, or the folder's index; what it is no file of, as it is. */
export function meantBy(files: readonly SourceFile[]): (target: string) => string {
  const paths = new Set(files.map(({ path }) => path));
  return (target) =>
    [target, `${target}.ts`, `${target}.tsx`, `${target}/index.ts`].find((it) => paths.has(it)) ??
    target;
}

/** The text without comments, for rules about what code names. */
export const codeOf = (file: SourceFile): string =>
  file.text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|[^:"'])\/\/.*$/gm, "$1");
