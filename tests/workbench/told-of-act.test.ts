import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ToldOfAct } from "../../src/workbench/tools/told-of-act";

/** A strip of news and two stacks of steps, as a program keeps them. */
class World {
  shown = "";
  turn = 0;
  private done: number[] = [];
  private undone: number[] = [];
  private made = 0;
  readonly told = new ToldOfAct(this);

  say(sentence: string): void {
    this.shown = sentence;
    this.turn += 1;
  }

  clear(): void {
    this.say("");
  }

  get last(): number | undefined {
    return this.done.at(-1);
  }

  get next(): number | undefined {
    return this.undone.at(-1);
  }

  private step(): void {
    this.told.steps({ undos: this.done.length, redos: this.undone.length });
  }

  edit(): number {
    this.made += 1;
    this.done.push(this.made);
    this.undone = [];
    this.step();
    return this.made;
  }

  act(): void {
    const name = String(this.edit());
    this.told.say(`Sorted ${name}.`, `Sort ${name} undone.`);
  }

  undo(): void {
    const step = this.done.pop();
    if (step !== undefined) this.undone.push(step);
    this.step();
  }

  redo(): void {
    const step = this.undone.pop();
    if (step !== undefined) this.done.push(step);
    this.step();
  }

  other(): void {
    this.say("Saved.");
  }
}

describe("the news of an act", () => {
  it("stands only while the act is the last thing done, and says so once it is taken back", () => {
    const moves = fc.array(fc.constantFrom("act", "edit", "undo", "redo", "other"), {
      maxLength: 20,
    });
    fc.assert(
      fc.property(moves, (all) => {
        const world = new World();
        for (const move of all) {
          world[move as "act"]();
          const sorted = /^Sorted (\d+)\.$/.exec(world.shown)?.[1];
          if (sorted !== undefined) expect(world.last).toBe(Number(sorted));
          const undone = /^Sort (\d+) undone\.$/.exec(world.shown)?.[1];
          if (undone !== undefined) expect(world.next).toBe(Number(undone));
        }
      }),
    );
  });

  it("becomes that it was undone, and leaves alone what was said since", () => {
    const world = new World();
    world.act();
    expect(world.shown).toBe("Sorted 1.");
    world.undo();
    expect(world.shown).toBe("Sort 1 undone.");
    world.redo();
    expect(world.shown).toBe("");
    world.act();
    world.other();
    world.undo();
    expect(world.shown).toBe("Saved.");
  });
});
