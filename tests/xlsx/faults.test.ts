/** Something fails while a workbook is patched: the answer is a problem, and nothing that was given changes. */
import type * as Fflate from "fflate";
import { afterEach, describe, expect, it, vi } from "vitest";
import { isFileProblem, patchXlsx, sayFile } from "../../src/xlsx";
import { Package } from "../../src/xlsx/package/package";
import { opened, patched } from "./answers";
import { fidelity } from "./fidelity";

const failing = vi.hoisted(() => ({ deflate: Infinity }));

vi.mock("fflate", async (original) => {
  const real = await original<typeof Fflate>();
  return {
    ...real,
    deflateSync: (...given: Parameters<typeof real.deflateSync>) => {
      if (failing.deflate === 0) throw new Error("no room left");
      failing.deflate -= 1;
      return real.deflateSync(...given);
    },
  };
});

afterEach(() => {
  failing.deflate = Infinity;
  vi.restoreAllMocks();
});

/** Runs once with no fault to count the steps, then with a fault at each of them. */
function atEachStep(steps: number, fail: (step: number) => void, check: () => void): void {
  for (let step = 0; step < steps; step++) {
    fail(step);
    check();
    failing.deflate = Infinity;
    vi.restoreAllMocks();
  }
}

describe.each(fidelity)("$name", ({ bytes, edits }) => {
  const given = bytes();
  const before = given.slice();
  const book = opened(given);
  const sound = patched(book, edits);

  const checkRefused = () => {
    const found = patchXlsx(book, edits);
    expect(isFileProblem(found) && sayFile(found)).toBe(
      'The file could not be worked on, and nothing was changed: "no room left".',
    );
    expect(given).toEqual(before);
  };

  it("is whole after a fault at each part that is packed, and saved soundly after it", () => {
    const packed = vi.fn();
    failing.deflate = Infinity;
    for (let parts = 0; ; parts++) {
      failing.deflate = parts;
      const found = patchXlsx(book, edits);
      if (!isFileProblem(found)) break;
      packed();
      expect(given).toEqual(before);
    }
    expect(packed.mock.calls.length).toBeGreaterThan(0);
    failing.deflate = Infinity;
    expect(patched(book, edits)).toEqual(sound);
  });

  it("is whole after a fault at each part that is written", () => {
    const set = vi.spyOn(Package.prototype, "set");
    patched(book, edits);
    const writes = set.mock.calls.length;
    set.mockRestore();
    expect(writes).toBeGreaterThan(0);
    const real = Reflect.get(Package.prototype, "set") as Package["set"];
    atEachStep(
      writes,
      (step) => {
        let left = step;
        vi.spyOn(Package.prototype, "set").mockImplementation(function (this: Package, ...to) {
          if (left === 0) throw new Error("no room left");
          left -= 1;
          real.apply(this, to);
        });
      },
      checkRefused,
    );
    expect(patched(book, edits)).toEqual(sound);
  });

  it("is whole after a fault at each part that is read", () => {
    const text = vi.spyOn(Package.prototype, "text");
    patched(book, edits);
    const reads = text.mock.calls.length;
    text.mockRestore();
    const real = Reflect.get(Package.prototype, "text") as Package["text"];
    atEachStep(
      reads,
      (step) => {
        let left = step;
        vi.spyOn(Package.prototype, "text").mockImplementation(function (this: Package, name) {
          if (left === 0) throw new Error("no room left");
          left -= 1;
          return real.call(this, name);
        });
      },
      checkRefused,
    );
  });
});
