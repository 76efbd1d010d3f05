/** What stands between our functions and a spreadsheet program: a stand-in of it, by its documented interface. */
import { afterEach, describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { outcome } from "./outcome";

type Called = (...given: unknown[]) => unknown;

const world = globalThis as unknown as Record<string, unknown>;
const names = ["CustomFunctions", "titrebookHears"];

class CellError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** Registered anew: each name is a module of its own. */
async function registered(as: string, errors?: typeof CellError): Promise<Map<string, Called>> {
  const found = new Map<string, Called>();
  world.CustomFunctions = {
    associate: (id: string, call: Called) => found.set(id, call),
    Error: errors,
  };
  const module = `../../src/functions/register.ts?${as}`;
  await import(/* @vite-ignore */ module);
  return found;
}

function thrown(call: Called | undefined, given: readonly unknown[]): CellError {
  try {
    call?.(...given);
  } catch (error) {
    return error as CellError;
  }
  throw new Error("nothing was thrown");
}

describe("registration", () => {
  afterEach(() => {
    for (const name of names) Reflect.deleteProperty(world, name);
  });

  it("hands over every function, each with its own answer", async () => {
    const found = await registered("all", CellError);
    expect([...found.keys()]).toEqual(catalogue.map(({ id }) => id));
    for (const entry of catalogue) {
      const given = goodArguments(entry.id);
      expect({ value: found.get(entry.id)?.(...given) }).toEqual(outcome(entry, given));
    }
  });

  it("makes a problem the program's own error: #VALUE! for what is wrong, #N/A for what is not there", async () => {
    const call = (await registered("errors", CellError)).get("ACIDVALUE");
    const wrong = thrown(call, [-1, 0.1, 10]);
    expect(wrong).toBeInstanceOf(CellError);
    expect([wrong.code, wrong.message]).toEqual(["#VALUE!", expect.stringContaining("-1")]);
    const missing = thrown(call, [null, 0.1, 10]);
    expect([missing.code, missing.message]).toEqual(["#N/A", expect.stringContaining("yet")]);
  });

  it("makes a plain error with the code where the program brings no error of its own", async () => {
    const call = (await registered("plain")).get("ACIDVALUE");
    expect(thrown(call, [-1, 0.1, 10])).toMatchObject({ code: "#VALUE!" });
    expect(thrown(call, [null, 0.1, 10])).toMatchObject({ code: "#N/A" });
  });

  it("tells whoever listens of a call as it arrived, and answers as before", async () => {
    const call = (await registered("heard", CellError)).get("CORRECTED");
    const heard: unknown[] = [];
    world.titrebookHears = (...all: unknown[]) => heard.push(all);
    expect(call?.([[2.4]], [[0.15]])).toBe(2.25);
    expect(heard).toEqual([["CORRECTED", [[[2.4]], [[0.15]]]]]);
  });

  it("does nothing where there is no program", async () => {
    const module = "../../src/functions/register.ts?alone";
    await expect(import(/* @vite-ignore */ module)).resolves.toBeDefined();
  });
});
