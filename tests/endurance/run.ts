/** One seed from its first step to its last; what goes wrong is told so that it can be done again. */
import {
  changeReading,
  lookAtResult,
  omitOrPutBack,
  pickSomething,
  takeReading,
  typeFigure,
  undoOnTheSlip,
  writeWords,
} from "./acts/at-the-bench";
import { closeAndOpen, recordABatch } from "./acts/a-batch";
import { openAnother, redo, typeSomewhere, undo } from "./acts/in-the-workbook";
import { lookAtARow, recordTheTitration } from "./acts/recording";
import { shareACopy } from "./acts/sharing";
import { addAColumn, writeWhatIfTable } from "./acts/tables";
import { World } from "./world";

type Act = (world: World) => unknown;

/** A person's day: most acts are at the bench; those that cost most are rare. */
const acts: Readonly<Record<string, readonly [weight: number, act: Act]>> = {
  "type a figure": [18, typeFigure],
  "take a reading": [18, takeReading as Act],
  "change a reading": [4, changeReading],
  "pick something": [5, pickSomething],
  "write words": [6, writeWords],
  "omit or put back": [6, omitOrPutBack],
  "undo on the slip": [5, undoOnTheSlip],
  "look at the result": [6, lookAtResult],
  "let typing settle": [3, ({ bench }) => bench.settle()],
  "close and open": [1.5, ({ bench }) => bench.reload("closed")],
  crash: [1, ({ bench }) => bench.reload("crashed")],
  "to another lot": [1, ({ bench }) => bench.toAnother()],
  "disk full or not": [
    0.6,
    ({ bench, chance }) => {
      bench.fill(chance.is(0.3));
    },
  ],
  "type in the workbook": [6, (world) => typeSomewhere(world)],
  "undo in the workbook": [3, undo],
  "redo in the workbook": [1.5, redo],
  "record the titration": [3, recordTheTitration],
  "look at a row": [2, lookAtARow],
  "record a batch": [0.8, recordABatch],
  "batch pane closed and opened": [0.5, closeAndOpen],
  "write a what-if table": [0.5, writeWhatIfTable],
  "add a column": [0.3, addAColumn],
  "share a copy": [0.1, shareACopy],
  "open another workbook": [0.8, openAnother],
};

const choices = Object.entries(acts).map(([name, [weight]]) => [weight, name] as const);

/** Throws with the seed, the step, what was done last and how to do it again. */
export async function endure(seed: number, steps: number): Promise<Map<string, number>> {
  const world = new World(seed);
  const done: string[] = [];
  for (let step = 1; step <= steps; step += 1) {
    const name = world.chance.weighted(choices);
    done.push(name);
    try {
      await acts[name]?.[1](world);
    } catch (problem) {
      const why = problem instanceof Error ? (problem.stack ?? problem.message) : String(problem);
      throw new Error(
        `Seed ${String(seed)}, step ${String(step)}, ${name}. Before it: ${done.slice(-7, -1).join(", ")}.\n` +
          `Again: SEED=${String(seed)} STEPS=${String(step)} npx vitest run --project programs tests/endurance\n${why}`,
      );
    }
  }
  await world.bench.settle();
  await world.bench.checkStore();
  world.workbook.check("the whole day");
  return world.tally;
}
