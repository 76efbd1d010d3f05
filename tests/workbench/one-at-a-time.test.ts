import { describe, expect, it } from "vitest";
import { OneAtATime } from "../../src/workbench/bar/one-at-a-time";

const turn = () => {
  let end: () => void = () => undefined;
  const work = new Promise<void>((done) => (end = done));
  return { work, end: () => end() };
};

describe("what works on the file", () => {
  it("is done one at a time: what else is asked meanwhile is not done", async () => {
    const one = new OneAtATime({ refuse: () => undefined });
    const first = turn();
    const done: string[] = [];
    const doing = one.do(() => first.work.then(() => done.push("first")));
    await one.do(() => Promise.resolve(done.push("second")));
    first.end();
    await doing;
    expect(done).toEqual(["first"]);
    expect(one.isBusy).toBe(false);
  });

  it("is followed by a save that was asked meanwhile, once, also where it failed", async () => {
    const said: string[] = [];
    const one = new OneAtATime({ refuse: (words) => said.push(words) });
    const first = turn();
    const done: string[] = [];
    const doing = one.do(() => first.work.then(() => Promise.reject(new Error("no"))));
    one.afterwards(() => Promise.resolve(done.push("save")));
    one.afterwards(() => Promise.resolve(done.push("save again")));
    first.end();
    await doing;
    expect(said).toHaveLength(1);
    expect(done).toEqual(["save again"]);
    await one.do(() => Promise.resolve(done.push("later")));
    expect(done).toEqual(["save again", "later"]);
  });
});
