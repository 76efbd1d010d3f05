import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";
import { beforeAll, describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import vectors from "../vectors.json";

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
interface Vector {
  fn: string;
  args: unknown[];
  expect: unknown;
  within: number;
  why: string;
}

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

function shown(vector: Vector): unknown {
  const call = functions.get(vector.fn);
  if (!call) throw new Error(`${vector.fn} is not registered`);
  try {
    return call(...vector.args);
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
  it.each(vectors as Vector[])("$fn: $why", (vector) => {
    const got = shown(vector);
    if (typeof vector.expect !== "number") {
      expect(JSON.parse(JSON.stringify(got))).toEqual(vector.expect);
      return;
    }
    expect(typeof got).toBe("number");
    const difference = Math.abs(Number(got) - vector.expect);
    expect(difference).toBeLessThanOrEqual(vector.within * Math.abs(vector.expect));
  });
});
