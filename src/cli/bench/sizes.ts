/** What a reader has to load of the build, packed. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { sizesOf } from "../build/sizes";
import { held, type Measure, told } from "./figure";

function sizesIn(folder: string) {
  if (!existsSync(folder)) return [];
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const contents = new Map(
    files.map((path) => [path.slice(folder.length + 1), readFileSync(path)]),
  );
  return sizesOf(contents).map(({ what, packed, most }) =>
    most === undefined
      ? told(what, packed / 1000, "kB gzip", 1)
      : held(what, packed / 1000, most, "kB gzip", 1),
  );
}

export const sizes: Measure = {
  name: "sizes",
  isOfBuild: true,
  run: (build) => Promise.resolve(sizesIn(build)),
};
