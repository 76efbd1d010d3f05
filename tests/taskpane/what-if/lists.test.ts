import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { lists, mostSizes } from "../../../src/taskpane/what-if/fields";
import { judgeList } from "../../../src/taskpane/what-if/list";
import { stepped } from "../../../src/taskpane/what-if/sizes";
import type { DecimalMark } from "../../../src/taskpane/widgets/typed-number";

const read = (text: string, mark: DecimalMark = ".") => judgeList(text, lists.sizes, mark, 5);
const figures = (text: string, mark: DecimalMark = "."): string[] => {
  const found = read(text, mark);
  return found.kind === "figures" ? found.values.map(String) : [found.kind];
};

describe("several figures in one field", () => {
  it("are told apart by spaces, semicolons, line ends, and commas with a space", () => {
    for (const text of ["50 100 200", "50;100;200", "50, 100, 200", " 50\n100\t200 "]) {
      expect(figures(text)).toEqual(["50", "100", "200"]);
    }
    expect(figures("  ")).toEqual(["empty"]);
  });

  it("may have a decimal comma or a decimal point", () => {
    expect(figures("2,5 3.5", ",")).toEqual(["2.5", "3.5"]);
    expect(figures("2,5; 3,5; 4", ",")).toEqual(["2.5", "3.5", "4"]);
  });

  it("are refused, never guessed, where commas stand between them without a space", () => {
    expect(read("100,200,300")).toMatchObject({
      kind: "wrong",
      sentence:
        'Batch sizes: "100,200,300" has more than one mark; put a space between two figures.',
    });
    expect(read("50 100,200")).toMatchObject({
      sentence: expect.stringContaining("can be read as 100.200 or as 100200") as string,
    });
  });

  it("are refused one by one, with the words of the one that is wrong", () => {
    expect(read("50 x")).toMatchObject({
      kind: "wrong",
      sentence: expect.stringContaining('"x"') as string,
    });
    expect(read("50 0 100")).toMatchObject({ kind: "wrong", mayBecomeRight: false });
    expect(read("50 0")).toMatchObject({ kind: "wrong", mayBecomeRight: true });
    expect(read("50 2000000")).toMatchObject({
      sentence: expect.stringContaining("Batch sizes is 2000000") as string,
    });
    expect(read("1 2 3 4 5 6")).toMatchObject({
      sentence: "Batch sizes: 6 are too many for one table; 5 at most.",
    });
  });

  it("come back as they were typed", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.integer({ min: 1, max: 9_999_999 }).map((n) => n / 100),
          { minLength: 1, maxLength: 5 },
        ),
        fc.constantFrom(" ", "; ", ", ", "\n"),
        (given, between) => {
          const found = read(given.map(String).join(between));
          const isAsGiven =
            found.kind === "figures" &&
            found.values.map((value) => value.toNumber()).join() === given.join();
          // three digits after a point are never thousands where the point is usual
          return isAsGiven;
        },
      ),
    );
  });
});

describe("sizes from one to another", () => {
  const made = (from: string, to: string, step: string) =>
    stepped(exact(from), exact(to), exact(step));
  const values = (from: string, to: string, step: string): string[] => {
    const found = made(from, to, step);
    return found.kind === "sizes" ? found.values.map(String) : [found.kind];
  };

  it("reach the end where a step falls on it, and stop before it where none does", () => {
    expect(values("50", "200", "50")).toEqual(["50", "100", "150", "200"]);
    expect(values("10", "100", "40")).toEqual(["10", "50", "90"]);
    expect(values("100", "100", "7")).toEqual(["100"]);
    expect(values("0.1", "0.3", "0.1")).toEqual(["0.1", "0.2", "0.3"]);
  });

  it("are refused when they go down, and when there are too many", () => {
    expect(made("200", "50", "50")).toMatchObject({
      sentence: "From 200 to 50 goes down: type the smaller size first.",
    });
    expect(made("1", "1000000", "1")).toMatchObject({
      sentence: "That makes 1000000 batch sizes; 200 at most: take a larger step.",
    });
  });

  it("rise by the step and stay within their ends", () => {
    const tenths = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(tenths, tenths, tenths, (a, more, step) => {
        const [from, to] = [exact(a).div(10), exact(a + more).div(10)];
        const found = stepped(from, to, exact(step).div(10));
        if (found.kind !== "sizes") return more / step > mostSizes - 2;
        const { values: all } = found;
        return all.every(
          (each, at) => each.eq(from.plus(exact(step * at).div(10))) && each.lte(to),
        );
      }),
    );
  });
});
