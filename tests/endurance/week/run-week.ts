/** One seed of a week from its first step to its last. */
import { Chance } from "../chance";
import { weekActs } from "./acts";
import { WeekWorld } from "./world";

export async function week(seed: number, steps: number): Promise<Map<string, number>> {
  const world = new WeekWorld(new Chance(seed));
  const tally = new Map<string, number>();
  const done: string[] = [];
  for (let step = 1; step <= steps; step += 1) {
    const [name, act] = world.chance.weighted(weekActs);
    done.push(name);
    tally.set(name, (tally.get(name) ?? 0) + 1);
    try {
      await act(world);
      world.check();
    } catch (problem) {
      const why = problem instanceof Error ? (problem.stack ?? problem.message) : String(problem);
      throw new Error(
        `Week, seed ${String(seed)}, step ${String(step)}, ${name}. Before it: ${done.slice(-6, -1).join(", ")}.\n` +
          `Again: SEED=${String(seed)} STEPS=${String(step)} npx vitest run --project programs tests/endurance/week\n${why}`,
      );
    }
  }
  return tally;
}
