/** One seed of a week on the page. An act that Undo takes back is now and then taken back. */
import { Chance } from "../../../endurance/chance";
import { Model } from "../../../endurance/week/model";
import { serve, type Served } from "../../browser";
import { type Back, pageActs } from "./acts";
import { PageWeek } from "./page-week";

const copied = (model: Model): Model => Object.assign(new Model(), structuredClone(model));

async function undone(week: PageWeek, before: Model, back: Back): Promise<void> {
  await week.page.click("#undo");
  // a save asked while the file is being changed back is done after it
  if (back === "in the file" && week.chance.is(0.5)) await week.says("Taken back:");
  else await week.page.waitForTimeout(150);
  Object.assign(week.model, before);
  await week.save();
}

async function week(served: Served, seed: number, steps: number): Promise<Map<string, number>> {
  const opened = await served.open();
  const chance = new Chance(seed);
  const one = new PageWeek(chance, opened.page, served.address);
  const tally = new Map<string, number>();
  const count = (name: string) => tally.set(name, (tally.get(name) ?? 0) + 1);
  const done: string[] = [];
  try {
    await one.start();
    for (let step = 1; step <= steps; step += 1) {
      const [name, act] = chance.weighted(pageActs);
      done.push(`${String(step)} ${name}`);
      const before = copied(one.model);
      const back = await act(one);
      count(name);
      if (back && chance.is(0.2)) {
        done.push("undo");
        await undone(one, before, back);
        count("undo");
      }
      if (opened.complaints.length > 0) throw new Error(opened.complaints.join("; "));
    }
    await one.save();
    return tally;
  } catch (problem) {
    const { SHOT } = process.env;
    if (SHOT !== undefined) {
      await opened.page.screenshot({ path: `${SHOT}/week-${String(seed)}.png` });
    }
    const why = problem instanceof Error ? (problem.stack ?? problem.message) : String(problem);
    throw new Error(
      `Week on the page, seed ${String(seed)}: ${done.slice(-8).join(", ")}.\n` +
        `Again: npm run endure -- --week --browser --from ${String(seed)} --seeds 1 --steps ${String(done.length)}\n${why}`,
    );
  } finally {
    await opened.page.context().close();
  }
}

export async function openWeek() {
  const served = await serve();
  return {
    run: (seed: number, steps: number) => week(served, seed, steps),
    close: () => served.close(),
  };
}
