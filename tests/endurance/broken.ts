/**
 * Is the model any good? Each breakage is done to a copy of the sources, in the system's folder for
 * what passes; a few seeds are run there, and it is told after how many steps the model noticed.
 */
import { execFile } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "../rules/sources-of";
import { type Breakage, breakages } from "./breakages";

const [seeds, steps] = [10, 2000];

/** What the seeds need of the project. */
const parts = ["src", "tests", "package.json", "tsconfig.json", "vitest.config.ts"];

function copyOfAll(): string {
  const folder = mkdtempSync(join(tmpdir(), "titrebook-broken-"));
  for (const part of parts) cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  return folder;
}

const usual = ["--seeds", String(seeds), "--steps", String(steps), "--stop"];
// its steps cost more
const week = ["--week", "--seeds", "5", "--steps", "200", "--stop"];

const run = (folder: string, by: Breakage["by"]): Promise<string> =>
  new Promise((done) => {
    const walk = ["--import", "tsx", "tests/endurance/command.ts"];
    const suite = ["node_modules/vitest/vitest.mjs", "run", "--bail", "1", by ?? ""];
    const isWalk = by === undefined || by === "week";
    const command = isWalk ? [...walk, ...(by === "week" ? week : usual)] : suite;
    execFile(process.execPath, command, { cwd: folder }, (_, said, complaint) =>
      done(said + complaint),
    );
  });

interface Noticed {
  readonly after: string;
  readonly by: string;
}

/** After how many steps, over all seeds, or by which test; undefined when it never was. */
function noticedIn(said: string, { file, by }: Breakage): Noticed | undefined {
  const [, seed, step, act] = /^(?:Seed|Week, seed) (\d+), step (\d+), ([^.]*)\./m.exec(said) ?? [];
  if (seed !== undefined) {
    const each = by === "week" ? 200 : steps;
    const taken = (Number(seed) - 1) * each + Number(step);
    return { after: `${String(taken)} steps`, by: act ?? "" };
  }
  const [, failed] = / FAIL .*? > (.*)/.exec(said) ?? [];
  if (failed !== undefined) return { after: "a test", by: failed };
  if (said.includes(" held, 0 failed") || /Tests .*passed/.test(said)) return undefined;
  throw new Error(`${file}: ${said.slice(-2000)}`);
}

async function noticed(folder: string, breakage: Breakage): Promise<Noticed | undefined> {
  const { file, line, broken } = breakage;
  const path = join(folder, file);
  const text = readFileSync(path, "utf8");
  writeFileSync(
    path,
    text.replace(line, () => broken),
  );
  const said = await run(folder, breakage.by);
  writeFileSync(path, text);
  return noticedIn(said, breakage);
}

/** Fails when one of them is not noticed, or when the product itself does not hold. */
/** @param from the first one of them, from 1 */
export async function breakAll(from: number): Promise<void> {
  const folder = copyOfAll();
  let missed = 0;
  console.log("| broken on purpose | noticed after | by |\n| --- | --- | --- |");
  try {
    for (const breakage of breakages.slice(from - 1)) {
      const found = await noticed(folder, breakage);
      if (!found) missed += 1;
      console.log(`| ${breakage.what} | ${found?.after ?? "**never**"} | ${found?.by ?? ""} |`);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
  console.log(`${String(breakages.length - from + 1)} broken, ${String(missed)} not noticed.`);
  if (missed > 0) process.exitCode = 1;
}
