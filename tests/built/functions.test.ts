import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";
import { beforeAll, describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { built, isRight, type Seen } from "../vectors";

/** The error class as the spreadsheet program gives it. */
class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

type Call = (...given: unknown[]) => unknown;
const functions = new Map<string, Call>();
const metadata = JSON.parse(readFileSync(join(root, "dist/functions.json"), "utf8")) as {
  functions: { id: string; helpUrl: string; parameters: unknown[] }[];
};

beforeAll(() => {
  const code = readFileSync(join(root, "dist/functions.js"), "utf8");
  const CustomFunctions = {
    Error: CellError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    associate: (id: string, call: Call) => functions.set(id, call),
  };
  vm.runInNewContext(code, { CustomFunctions, console });
});

function shown(id: string, given: readonly unknown[]): Seen {
  const call = functions.get(id);
  if (!call) throw new Error(`${id} is not registered`);
  try {
    // out of the other realm, as plain values
    return { value: JSON.parse(JSON.stringify(call(...given))) };
  } catch (thrown) {
    const { code, message } = thrown as CellError;
    expect(message.length).toBeGreaterThanOrEqual(6);
    expect(message.length).toBeLessThanOrEqual(200);
    return { error: code };
  }
}

describe("the built functions.js", () => {
  it("registers every function of functions.json, and no other", () => {
    const ids = metadata.functions.map((entry) => entry.id);
    expect([...functions.keys()].sort()).toEqual([...ids].sort());
  });

  it("stays quiet where there is no CustomFunctions at all", () => {
    const code = readFileSync(join(root, "dist/functions.js"), "utf8");
    expect(() => vm.runInNewContext(code, {})).not.toThrow();
  });

  it("carries the code of a refusal even where the program's error class is missing", () => {
    const found = new Map<string, Call>();
    const CustomFunctions = { associate: (id: string, call: Call) => found.set(id, call) };
    vm.runInNewContext(readFileSync(join(root, "dist/functions.js"), "utf8"), { CustomFunctions });
    expect(() => found.get("ACIDVALUE")?.(2.3, 0.1, null)).toThrow(
      expect.objectContaining({ code: "#N/A", message: expect.stringContaining("sample mass") }),
    );
  });

  it("ignores the call's own Invocation object after the last argument", () => {
    const invocation = { functionName: "ACIDVALUE", setResult: () => undefined };
    expect(functions.get("ACIDVALUE")?.(2.3, 0.1, 10, invocation)).toBe(1.2903);
  });

  it("has a help page for every function at the address that functions.json names", () => {
    for (const { helpUrl } of metadata.functions) {
      expect(existsSync(join(root, "dist", new URL(helpUrl).pathname))).toBe(true);
    }
  });
});

describe("the checked vectors, through the built file", () => {
  it.each(built)("$fn: $why", (vector) => {
    const seen = shown(vector.fn, vector.args);
    expect(isRight(seen, vector), JSON.stringify(seen)).toBe(true);
  });
});
