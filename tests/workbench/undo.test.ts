/**
 * Undo and redo over what is typed, sorts, and acts on rows and sheets, against a list of what the grid
 * held: each time it must hold again what it held then, and so must the file.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bookOf } from "../xlsx/files";
import { times } from "../thorough";
import { Acting, type Held } from "./acting";

const cell = (address: string, value: number) => `<c r="${address}"><v>${String(value)}</v></c>`;

/** Titres with a name beside each, and their sum in the heading's row. */
const bytes = bookOf(
  `<row r="1"><c r="A1" t="str"><v>Titre</v></c><c r="B1" t="str"><v>Kitchen</v></c><c r="D1"><f>SUM(A2:A9)</f><v>12</v></c></row>` +
    [3, 1, 5, 2, 1]
      .map((titre, at) => {
        const row = String(at + 2);
        return `<row r="${row}">${cell(`A${row}`, titre)}${cell(`B${row}`, 100 + at)}</row>`;
      })
      .join(""),
);

const isSame = (a: Held, b: Held): boolean => JSON.stringify(a) === JSON.stringify(b);

/** How many steps of its own the grid has, the one to before the last act among them. */
const most = 20;

/** What was held, as one goes back and forth: steps of the grid, and whole files on either side. */
class Model {
  private local: Held[];
  private at = 0;
  /** The oldest that the grid itself goes back to. */
  private oldest = 0;
  private past: Held[] = [];
  private future: Held[] = [];

  constructor(first: Held) {
    this.local = [first];
  }

  get now(): Held {
    return this.local[this.at] ?? [];
  }

  private begin(held: Held): void {
    this.local = [held];
    this.at = this.oldest = 0;
  }

  private get first(): Held {
    return this.local[0] ?? [];
  }

  edited(held: Held): void {
    this.local = [...this.local.slice(0, this.at + 1), held];
    this.at += 1;
    const kept = this.past.length > 0 ? most - 1 : most;
    this.oldest = Math.max(this.oldest, this.at - kept);
    this.future = [];
  }

  acted(held: Held): void {
    const typed = isSame(this.first, this.now) ? [] : [this.first];
    this.past = [...this.past, ...typed, this.now].slice(-20);
    this.future = [];
    this.begin(held);
  }

  undo(): void {
    const last = this.local.at(-1);
    const before = this.past.at(-1);
    if (this.at > this.oldest) this.at -= 1;
    else if (before) {
      const isBeyond = this.local.length > this.at + 1 && last && !isSame(last, this.first);
      this.future = [...(isBeyond ? [last] : this.future), this.now];
      // what the grid let go of is gone over at once, and the act after it
      const isTyped = !isSame(this.now, this.first);
      if (!isTyped) this.past = this.past.slice(0, -1);
      this.begin(isTyped ? this.first : before);
    }
  }

  redo(): void {
    const after = this.future.at(-1);
    if (this.at < this.local.length - 1) this.at += 1;
    else if (after) {
      this.past = [...this.past, this.first];
      this.future = this.future.slice(0, -1);
      this.begin(after);
    }
  }
}

const does = [
  ...["type", "type", "type", "empty", "sort", "save"],
  ...["insert-rows", "insert-rows", "delete-rows", "rename-sheet", "type-many"],
] as const;

const one = fc.record({
  do: fc.constantFrom(...does),
  row: fc.integer({ min: 1, max: 6 }),
  column: fc.nat({ max: 1 }),
  direction: fc.constantFrom("up" as const, "down" as const),
});
/** Some of these, and then so many presses. */
const round = fc.record({
  does: fc.array(one, { minLength: 1, maxLength: 5 }),
  undo: fc.oneof({ weight: 4, arbitrary: fc.nat({ max: 6 }) }, fc.integer({ min: 19, max: 24 })),
  redo: fc.nat({ max: 5 }),
});
type Round = typeof round extends fc.Arbitrary<infer Each> ? Each : never;
type Done = typeof one extends fc.Arbitrary<infer One> ? One : never;

/** Never the same twice. */
let last = 1000;
const fresh = (): number => (last += 1);

/** More than the grid has steps of its own. */
const many = 23;

/** What the grid has a step more for. */
async function doOne(acting: Acting, one: Done): Promise<"edited" | "acted" | undefined> {
  const { sheet } = acting;
  switch (one.do) {
    case "type":
    case "type-many":
      await acting.type(one.row, one.column, fresh());
      return "edited";
    case "empty":
      await acting.type(one.row, 0, null);
      return "edited";
    case "sort":
      return (await acting.sort(one.direction)) ? "edited" : undefined;
    case "insert-rows":
      await acting.act({ do: one.do, sheet, before: one.row, count: 1 });
      return "acted";
    case "delete-rows":
      await acting.act({ do: one.do, sheet, first: one.row, count: 1 });
      return "acted";
    case "rename-sheet":
      await acting.act({ do: one.do, sheet, name: `Log ${String(fresh())}` });
      return "acted";
    case "save":
      await acting.saves("save");
      return undefined;
  }
}

const step = (what: Done["do"]): Done => ({ do: what, row: 1, column: 0, direction: "up" });

async function holdsAfter(rounds: readonly Round[]): Promise<void> {
  const acting = await Acting.on(bytes);
  try {
    const model = new Model(acting.holds());
    for (const { does: all, undo, redo } of rounds) {
      for (const each of all) {
        for (let time = 0; time < (each.do === "type-many" ? many : 1); time += 1) {
          const next = await doOne(acting, each);
          if (next) model[next](acting.holds());
        }
      }
      for (let times = 0; times < undo + redo; times += 1) {
        const key = times < undo ? "undo" : "redo";
        await acting.press(key);
        model[key]();
        expect(acting.holds()).toEqual(model.now);
      }
      expect(await acting.saves("try")).toEqual(model.now);
    }
  } finally {
    acting.close();
  }
}

describe("undo and redo over what is typed and acts", () => {
  it("come back and forth to what was held, in any order, and so does the file", async () => {
    await fc.assert(fc.asyncProperty(fc.array(round, { minLength: 2, maxLength: 3 }), holdsAfter), {
      numRuns: times(4),
      // what rows deleted before came to stood in no file when typing after them was taken back
      examples: [
        [
          [
            { does: [step("delete-rows"), step("type"), step("insert-rows")], undo: 0, redo: 0 },
            { does: [step("type")], undo: 3, redo: 0 },
          ],
        ],
        // the act went out of the history by what was typed after it
        [[{ does: [step("delete-rows"), step("type-many")], undo: 21, redo: 22 }]],
        // ... and again, once some of it was taken back
        [
          [
            { does: [step("type"), step("insert-rows"), step("type-many")], undo: 5, redo: 0 },
            { does: [step("type"), step("type-many"), step("type")], undo: 23, redo: 23 },
          ],
        ],
      ],
    });
  });

  it("say of what the grid let go of in how many cells it was, and then come to the act", async () => {
    const acting = await Acting.on(bytes);
    const opening = acting.holds();
    await acting.act({ do: "delete-rows", sheet: acting.sheet, first: 2, count: 1 });
    for (let row = 1; row <= 25; row += 1) await acting.type(row, 0, fresh());
    const said = [];
    for (let press = 1; press <= 21; press += 1) said.push(await acting.press("undo"));
    expect(acting.holds()).toEqual(opening);
    acting.close();
    // by hand: of 20 steps one is the act, so that 19 cells are taken back one by one, and the first 6 at once
    expect(said.filter((each) => each !== undefined)).toEqual([
      "Taken back: what was typed or changed in 6 cells.",
      "Taken back: delete-rows",
    ]);
    expect(said.slice(0, 19)).toEqual(Array.from({ length: 19 }, () => undefined));
  });

  it("say what each press went over, and stop at the opening and at the last", async () => {
    const acting = await Acting.on(bytes);
    const opening = acting.holds();
    await acting.type(1, 0, 7);
    await acting.type(2, 0, 8);
    await acting.type(2, 0, 9);
    await acting.act({ do: "insert-rows", sheet: acting.sheet, before: 1, count: 1 });
    await acting.type(1, 0, 4);
    const end = acting.holds();
    const said = [];
    for (const key of ["undo", "undo", "undo", "undo"] as const) said.push(await acting.press(key));
    expect(acting.holds()).toEqual(opening);
    for (const key of ["redo", "redo", "redo", "redo"] as const) said.push(await acting.press(key));
    expect(acting.holds()).toEqual(end);
    acting.close();
    expect(said).toEqual([
      undefined,
      "Taken back: insert-rows",
      "Taken back: what was typed or changed in 2 cells.",
      undefined,
      "Done again: what was typed or changed in 2 cells.",
      "Done again: insert-rows",
      "Done again: what was typed or changed in 1 cell.",
      undefined,
    ]);
  });
});
