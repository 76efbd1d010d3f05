import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { namesOf } from "./names-of";
import { filesUnder, meantBy, root, type SourceFile } from "./sources-of";

const config = (path: string): SourceFile => ({
  path,
  text: readFileSync(join(root, path), "utf8"),
});

const files = [...filesUnder("src"), ...filesUnder("tests"), config("webpack.config.js")];
/** What the test program is told to run by itself. */
const isWired = (path: string): boolean => config("vitest.config.ts").text.includes(`"${path}"`);
const named = files.map((file) => ({ path: file.path, ...namesOf(file) }));

const paths = new Set(files.map(({ path }) => path));
const meant = meantBy(files);

const used = new Set(
  named.flatMap(({ taken }) => taken.map(({ from, name }) => `${meant(from)}: ${name}`)),
);

describe("the exports", () => {
  it.each(["src", "tests"])("of %s are each used in another file than their own", (part) => {
    const found = named
      .filter(({ path }) => path.startsWith(`${part}/`) && !isWired(path))
      .flatMap(({ path, given }) =>
        given
          .map((name) => `${path}: ${name}`)
          .filter((it) => !used.has(it) && !used.has(`${path}: *`)),
      );
    expect(found).toEqual([]);
  });

  it("are looked for in files that are there", () => {
    const lost = named.flatMap(({ path, taken }) =>
      taken
        .map(({ from }) => meant(from))
        .filter((from) => !paths.has(from) && !existsSync(join(root, from)))
        .map((from) => `${path}: ${from}`),
    );
    expect(lost).toEqual([]);
  });
});
