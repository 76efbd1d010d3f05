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
  git("worktree", "add", "--detach", folder, commit);
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  rmSync(join(folder, "src/cli/bench"), { recursive: true, force: true });
  cpSync(join(root, "src/cli/bench"), join(folder, "src/cli/bench"), { recursive: true });
  return folder;
}

const build = (folder: string): void => {
  const words = ["webpack", "--mode", "production", "--env", `out=${join(folder, "dist")}`];
  execFileSync("npx", words, { cwd: folder, stdio: "ignore" });
};

/** Nothing when the tree is too old for a measure. */
function figuresOf(folder: string, { name }: Measure, answer: string): Figure[] {
  rmSync(answer, { force: true });
  try {
    const script = join(folder, "src/cli/bench/one-measure.ts");
    execFileSync("npx", ["tsx", script, name, folder, answer], { cwd: folder, ...inherit });
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
  const before = otherTree(root, commit);
  const answer = join(root, ".bench", "answer.json");
  build(before);
  build(root);
  const pairs = measures.flatMap((measure) => {
    const found = { before: [] as Figure[], now: [] as Figure[] };
    for (let turn = 0; turn < turns; turn += 1) {
      found.before.push(...figuresOf(before, measure, answer));
      found.now.push(...figuresOf(root, measure, answer));
    }
    const old = leastOf(found.before);
    return leastOf(found.now).flatMap((now): Pair[] => {
      const then = old.find((each) => isSame(each, now));
      return then ? [{ before: then, now }] : [];
    });
  });
  execFileSync("git", ["-C", root, "worktree", "remove", "--force", before], inherit);
  return pairs;
}
