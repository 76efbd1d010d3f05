/** The last steps of a build, over the files it wrote: nothing local left, sums written, sizes said. */
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { localBase } from "./base";
import { checksumList } from "./checksums";
import { leftIn } from "./leftovers";
import { sizeReport } from "./sizes";

const sumsFile = "checksums.txt";
const isText = (name: string): boolean => /\.(html|js|css|json|xml|txt|svg)$/.test(name);

export interface Build {
  readonly folder: string;
  readonly base: string;
  /** Every file that was made, from the folder on, with forward slashes. */
  readonly made: ReadonlySet<string>;
  /** Every part was made now. Otherwise those that were not are there from before, and belong to it. */
  readonly isWhole: boolean;
}

/** Every file in a folder and those below, with forward slashes. */
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(join(folder, "/").length))
    .map((name) => name.replaceAll("\\", "/"));

/** Files of an earlier build, which nobody should be given. */
function clearOut({ folder, made }: Build): void {
  for (const name of filesIn(folder)) if (!made.has(name)) rmSync(join(folder, name));
}

/** Returns what is to be printed; throws a sentence when the build must not be given to anybody. */
export function finishBuild(build: Build): string {
  const { folder, base, made, isWhole } = build;
  const before = isWhole ? [] : filesIn(folder).filter((name) => name !== sumsFile);
  const names = new Set([...before, ...made]);
  const files = new Map([...names].map((name) => [name, readFileSync(join(folder, name))]));
  if (base !== localBase) {
    const left = [...files]
      .filter(([name]) => isText(name))
      .flatMap(([name, content]) =>
        leftIn(name, content.toString("utf8")).map((address) => `${name} holds ${address}`),
      );
    if (left.length > 0) {
      throw new Error(`The build for ${base} still names this machine: ${left.join("; ")}.`);
    }
    if (isWhole) clearOut(build);
  }
  const sums = checksumList(files);
  writeFileSync(join(folder, sumsFile), sums);
  return `${sizeReport(files)}\n${files.size} files for ${base}; their sums are in ${sumsFile}.`;
}
