/**
 * Programs side by side: one line as each begins, what it has to say as it ends; what failed is said
 * once more last of all, so that the end of a log is the place to look. One that fails makes the whole fail, and
 * those behind it are not begun; all others go on to their end.
 */
import { spawn } from "node:child_process";
import { setPriority } from "node:os";

export interface Work {
  /** As typed: a program of the packages, or any other on the path, and its words. */
  readonly command: string;
  /** Lets whatever else wants a core go first. */
  readonly isPatient?: boolean;
  /** Begun once this has gone well. */
  readonly then?: readonly Work[];
  /** Begun once this has ended, whatever became of it. */
  readonly after?: readonly Work[];
}

/** One after the other, whatever becomes of each: what has time, and would be in the way of the rest. */
export function inTurn([first, ...others]: readonly Work[]): readonly Work[] {
  return first ? [{ ...first, after: inTurn(others) }] : [];
}

interface Ended {
  readonly command: string;
  readonly said: string;
  readonly isWell: boolean;
}

/** Behind others, but never so far that a test runs out of its time. */
const patient = 5;

function ended({ command, isPatient = false }: Work): Promise<Ended> {
  const [program = "", ...given] = command.split(" ");
  const run = spawn(program, given, { stdio: "pipe", shell: process.platform === "win32" });
  if (isPatient && run.pid !== undefined) setPriority(run.pid, patient);
  const parts: Buffer[] = [];
  run.stdout.on("data", (part: Buffer) => parts.push(part));
  run.stderr.on("data", (part: Buffer) => parts.push(part));
  const words = (): string => Buffer.concat(parts).toString();
  return new Promise((done) => {
    run.on("error", (error) => done({ command, said: `${String(error)}\n`, isWell: false }));
    run.on("close", (code) => done({ command, said: words(), isWell: code === 0 }));
  });
}

const seconds = (since: number): string => `${String(Math.round((Date.now() - since) / 1000))} s`;

/** Everything that failed, in the order in which it did. */
async function failures(works: readonly Work[]): Promise<readonly Ended[]> {
  const all = await Promise.all(
    works.map(async (work): Promise<readonly Ended[]> => {
      const began = Date.now();
      console.log(`begun: ${work.command}`);
      const end = await ended(work);
      const { command, said, isWell } = end;
      if (isWell) console.log(`${said}well: ${command} (${seconds(began)})`);
      else
        console.log(`${said}FAILED: ${command} (${seconds(began)}): it is said again at the end`);
      const next = await failures([...(isWell ? (work.then ?? []) : []), ...(work.after ?? [])]);
      return isWell ? next : [end, ...next];
    }),
  );
  return all.flat();
}

/** Runs all of it; the process ends with 1 if anything failed. */
export async function sideBySide(works: readonly Work[]): Promise<void> {
  const failed = await failures(works);
  for (const { command, said } of failed) console.log(`\nFAILED: ${command}\n${said}`);
  if (failed.length === 0) return;
  process.exitCode = 1;
  console.log(["", ...failed.map(({ command }) => `FAILED: ${command}`)].join("\n"));
}
