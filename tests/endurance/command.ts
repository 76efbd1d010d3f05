/**
 * `npm run endure -- --seeds 200 --steps 2000` (or `--browser --seeds 10 --steps 500`): longer than CI
 * has time for. `--from 101` begins at another seed. Goes on after a failure, and says how many held;
 * `--stop` stops there. `--week` is a week in a logbook's file: rows, columns and sheets come and go (with `--browser`, on the page). `--broken` breaks the product on purpose instead: does the model notice?
 */
import { parseArgs } from "node:util";
import { breakAll } from "./broken";
import { endure } from "./run";

const { values } = parseArgs({
  options: {
    seeds: { type: "string", default: "200" },
    steps: { type: "string", default: "2000" },
    from: { type: "string", default: "1" },
    browser: { type: "boolean", default: false },
    stop: { type: "boolean", default: false },
    broken: { type: "boolean", default: false },
    week: { type: "boolean", default: false },
  },
});

type Run = (seed: number, steps: number) => Promise<ReadonlyMap<string, number>>;

async function runner(): Promise<{ run: Run; close(): Promise<void> }> {
  if (values.week && !values.browser) {
    // before anything that leads to the grid's own modules
    await import("../../src/workbench/engine/node");
    const { week } = await import("./week/run-week");
    return { run: week, close: () => Promise.resolve() };
  }
  if (!values.browser) return { run: endure, close: () => Promise.resolve() };
  // before anything that leads to the grid's own modules
  if (values.week) await import("../../src/workbench/engine/node");
  const { endBrowser } = await import("../browser/shared-browser");
  const { run, close } = values.week
    ? await (await import("../browser/endurance/week/run")).openWeek()
    : await (await import("../browser/endurance/day")).openEndurance();
  return { run, close: () => close().then(endBrowser) };
}

async function main(): Promise<void> {
  const { run, close } = await runner();
  const [from, count, steps] = [values.from, values.seeds, values.steps].map(Number) as [
    number,
    number,
    number,
  ];
  const all = new Map<string, number>();
  const began = Date.now();
  let failed = 0;
  for (let seed = from; seed < from + count; seed += 1) {
    const start = Date.now();
    try {
      for (const [what, times] of await run(seed, steps)) {
        all.set(what, (all.get(what) ?? 0) + times);
      }
      // one of these takes minutes
      if (values.browser) {
        console.log(`Seed ${String(seed)} held, ${((Date.now() - start) / 1000).toFixed(0)} s.`);
      }
    } catch (problem) {
      failed += 1;
      console.log(problem instanceof Error ? problem.message : String(problem));
      if (values.stop) break;
    }
    if ((seed - from + 1) % 10 === 0) console.log(`${String(seed - from + 1)} seeds done`);
  }
  await close();
  const seconds = ((Date.now() - began) / 1000).toFixed(0);
  console.log(
    `${String(count)} seeds of ${String(steps)} steps, from ${String(from)}, in ${seconds} s: ${String(count - failed)} held, ${String(failed)} failed.`,
  );
  console.log([...all].map(([what, times]) => `${what} ${String(times)}`).join(", "));
  if (failed > 0) process.exitCode = 1;
}

void (values.broken ? breakAll(Number(values.from)) : main());
