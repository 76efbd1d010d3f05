/** One seed on the page, from its first step to its last. SHOT names a folder for what it looked like. */
import { serve, type Served } from "../browser";
import * as files from "./file-acts";
import * as grid from "./grid-acts";
import { PageWorld } from "./page-world";
import * as tasks from "./task-acts";

type Act = (world: PageWorld) => Promise<void>;

const choices: readonly (readonly [weight: number, readonly [name: string, act: Act]])[] = [
  [10, ["type in a cell", grid.typeInACell]],
  [4, ["undo", grid.undo]],
  [2, ["redo", grid.redo]],
  [3, ["change sheet", grid.changeSheet]],
  [4, ["type in a task", tasks.typeInATask]],
  [1, ["reload", files.reload]],
  [2, ["save", files.save]],
  [1, ["open", files.open]],
  [0.4, ["record a titration", tasks.recordATitration]],
  [0.3, ["write a what-if table", tasks.writeAWhatIf]],
  [0.4, ["share a copy", files.share]],
];

async function day(served: Served, seed: number, steps: number): Promise<Map<string, number>> {
  const opened = await served.open();
  const world = new PageWorld(seed, opened, served.address);
  const done: string[] = [];
  let step = 0;
  try {
    await world.start();
    for (step = 1; step <= steps; step += 1) {
      const [name, act] = world.chance.weighted(choices);
      done.push(name);
      await act(world);
      world.tally.set(name, (world.tally.get(name) ?? 0) + 1);
      if (opened.complaints.length > 0) throw new Error(opened.complaints.join("; "));
    }
    await files.save(world);
    return world.tally;
  } catch (problem) {
    const { SHOT } = process.env;
    if (SHOT !== undefined) {
      await opened.page.screenshot({ path: `${SHOT}/seed-${String(seed)}.png` });
    }
    const why = problem instanceof Error ? (problem.stack ?? problem.message) : String(problem);
    throw new Error(
      `Page, seed ${String(seed)}, step ${String(step)}: ${done.slice(-8).join(", ")}.\n` +
        `Again: WIDE=1 SEED=${String(seed)} STEPS=${String(step)} npx vitest run --project browser tests/browser/wide/endurance.test.ts\n${why}` +
        (opened.complaints.length > 0 ? `\nThe page: ${opened.complaints.join("; ")}` : ""),
    );
  } finally {
    await opened.page.context().close();
  }
}

export async function openEndurance() {
  const served = await serve();
  return {
    run: (seed: number, steps: number) => day(served, seed, steps),
    close: () => served.close(),
  };
}
