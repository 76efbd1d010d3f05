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
const parts = ["src", "tests", "package.json", "tsconfig.json"];

function copyOfAll(): string {
  const folder = mkdtempSync(join(tmpdir(), "titrebook-broken-"));
  for (const part of parts) cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  return folder;
}

const run = (folder: string): Promise<string> =>
  new Promise((done) => {
    const options = ["--seeds", String(seeds), "--steps", String(steps), "--stop"];
    const command = ["--import", "tsx", "tests/endurance/command.ts", ...options];
    execFile(process.execPath, command, { cwd: folder }, (_, said, complaint) =>
      done(said + complaint),
    );
  });

/** Steps until it was noticed, over all seeds; undefined when it never was. */
async function noticed(folder: string, { file, line, broken }: Breakage) {
  const path = join(folder, file);
  const text = readFileSync(path, "utf8");
  writeFileSync(
    path,
    text.replace(line, () => broken),
  );
  const said = await run(folder);
  writeFileSync(path, text);
  const [, seed, step, act] = /^Seed (\d+), step (\d+), ([^.]*)\./m.exec(said) ?? [];
  if (seed !== undefined) return { steps: (Number(seed) - 1) * steps + Number(step), act };
  if (!said.includes(" held, 0 failed")) throw new Error(`${file}: ${said.slice(-2000)}`);
  return undefined;
}

/** Fails when one of them is not noticed, or when the product itself does not hold. */
export async function breakAll(): Promise<void> {
  const folder = copyOfAll();
  let missed = 0;
  console.log("| broken on purpose | noticed after | by |\n| --- | --- | --- |");
  try {
    for (const breakage of breakages) {
      const found = await noticed(folder, breakage);
      if (!found) missed += 1;
      const after = found ? `${String(found.steps)} steps` : "**never**";
      console.log(`| ${breakage.what} | ${after} | ${found?.act ?? ""} |`);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
  console.log(`${String(breakages.length)} broken, ${String(missed)} not noticed.`);
  if (missed > 0) process.exitCode = 1;
}
