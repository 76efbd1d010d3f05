/**
 * Two states of the project compared: another commit in a work tree under .bench/, and the tree as it
 * is. The measures are those of this tree in both, run by turns in processes of their own.
 */
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import type { Figure, Measure } from "./figure";
import type { Pair } from "./report";

const turns = 2;

const inherit = { stdio: "inherit" } as const;

/** The other tree, with this tree's packages and measures. */
function otherTree(root: string, commit: string): string {
  const folder = join(root, ".bench", "before");
  const git = (...words: string[]) => execFileSync("git", ["-C", root, ...words], inherit);
  if (existsSync(folder)) git("worktree", "remove", "--force", folder);
  git("worktree", "add", "--quiet", "--detach", folder, commit);
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  rmSync(join(folder, "src/cli/bench"), { recursive: true, force: true });
  cpSync(join(root, "src/cli/bench"), join(folder, "src/cli/bench"), { recursive: true });
  return folder;
}

/** A build of a tree, in a folder of its own: that in dist/ stays as it is. */
const build = (tree: string, folder: string): void => {
  const words = ["webpack", "--mode", "production", "--env", `out=${folder}`];
  execFileSync("npx", words, { cwd: tree, stdio: "ignore" });
};

interface Tree {
  readonly folder: string;
  readonly build: string;
}

/** Nothing when the tree is too old for a measure. */
function figuresOf({ folder, build: built }: Tree, { name }: Measure, answer: string): Figure[] {
  rmSync(answer, { force: true });
  try {
    const script = join(folder, "src/cli/bench/one-measure.ts");
    execFileSync("npx", ["tsx", script, name, built, answer], { cwd: folder, ...inherit });
  } catch {
    return [];
  }
  return JSON.parse(readFileSync(answer, "utf8")) as Figure[];
}

const isSame = (one: Figure, other: Figure): boolean =>
  one.what === other.what && one.unit === other.unit;

/** The smallest of each figure. */
function leastOf(all: readonly Figure[]): Figure[] {
  const least: Figure[] = [];
  for (const figure of all) {
    const at = least.findIndex((each) => isSame(each, figure));
    const known = least[at];
    if (!known) least.push(figure);
    else if (figure.value < known.value) least[at] = figure;
  }
  return least;
}

export function compared(root: string, commit: string, measures: readonly Measure[]): Pair[] {
  mkdirSync(join(root, ".bench"), { recursive: true });
  const inBench = (name: string) => join(root, ".bench", name);
  const answer = inBench("answer.json");
  const before = { folder: otherTree(root, commit), build: inBench("built-before") };
  const now = { folder: root, build: inBench("built-now") };
  if (measures.some(({ isOfBuild }) => isOfBuild)) {
    for (const tree of [before, now]) build(tree.folder, tree.build);
  }
  const pairs = measures.flatMap((measure) => {
    const found = { before: [] as Figure[], now: [] as Figure[] };
    for (let turn = 0; turn < turns; turn += 1) {
      found.before.push(...figuresOf(before, measure, answer));
      found.now.push(...figuresOf(now, measure, answer));
    }
    const old = leastOf(found.before);
    return leastOf(found.now).flatMap((figure): Pair[] => {
      const then = old.find((each) => isSame(each, figure));
      return then ? [{ before: then, now: figure }] : [];
    });
  });
  execFileSync("git", ["-C", root, "worktree", "remove", "--force", before.folder], inherit);
  return pairs;
}
