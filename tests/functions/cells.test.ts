import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { call, outcome } from "./outcome";

class RuntimeError {
  constructor(readonly code: string) {}
}

const everyArgument = catalogue.flatMap((entry) =>
  entry.arguments.map((argument, position) => ({ entry, argument, position })),
);

const given = (id: string, position: number, value: unknown): unknown[] => {
  const all = [...goodArguments(id)];
  all[position] = value;
  return all;
};

describe("what a cell may hold", () => {
  it.each(everyArgument)(
    "$entry.id: a 1x1 range or a rich value in $argument.name is its plain value",
    ({ entry, position }) => {
      const plain = goodArguments(entry.id)[position];
      const value: unknown = Array.isArray(plain) ? (plain as unknown[][])[0]?.[0] : plain;
      const alone = outcome(entry, given(entry.id, position, value));
      const rich = { type: "FormattedNumber", basicValue: value, numberFormat: "0.0" };
      expect(outcome(entry, given(entry.id, position, [[value]]))).toEqual(alone);
      expect(outcome(entry, given(entry.id, position, rich))).toEqual(alone);
      expect(outcome(entry, given(entry.id, position, [[rich]]))).toEqual(alone);
    },
  );

  it.each(everyArgument)("$entry.id: #N/A in $argument.name is #N/A out", ({ entry, position }) => {
    for (const error of [new RuntimeError("#N/A"), { type: "Error", basicValue: "#N/A" }]) {
      expect(outcome(entry, given(entry.id, position, [[error]]))).toMatchObject({ error: "#N/A" });
    }
  });

  it.each(everyArgument)(
    "$entry.id: any other error in $argument.name is #VALUE!, naming the argument and the error",
    ({ entry, argument, position }) => {
      for (const error of [new RuntimeError("#DIV/0!"), { type: "Error", basicValue: "#DIV/0!" }]) {
        const seen = outcome(entry, given(entry.id, position, [[error]]));
        expect(seen).toMatchObject({ error: "#VALUE!" });
        expect(seen).toMatchObject({ message: expect.stringContaining(argument.name) });
        expect(seen).toMatchObject({ message: expect.stringContaining("#DIV/0!") });
      }
    },
  );

  it.each(everyArgument)(
    "$entry.id: a boolean in $argument.name is #VALUE!, never 1 or 0",
    ({ entry, argument, position }) => {
      const seen = outcome(entry, given(entry.id, position, true));
      expect(seen).toMatchObject({ error: "#VALUE!" });
      expect(seen).toMatchObject({ message: expect.stringContaining(argument.name) });
    },
  );

  it.each(everyArgument)(
    "$entry.id: text nobody understands in $argument.name is #VALUE!, quoted and cut at 40 characters",
    ({ entry, argument, position }) => {
      const text = `2,35 ${"x".repeat(60)}`;
      const seen = outcome(entry, given(entry.id, position, text));
      expect(seen).toMatchObject({ error: "#VALUE!" });
      expect(seen).toMatchObject({ message: expect.stringContaining(argument.name) });
      expect(seen).toMatchObject({ message: expect.stringContaining(`"${text.slice(0, 40)}…"`) });
      // one cell has no row and column
      expect(seen).toMatchObject({ message: expect.not.stringMatching(/row \d/i) });
    },
  );

  it.each(everyArgument.filter(({ argument }) => !argument.list))(
    "$entry.id: a range where $argument.name takes one cell is #VALUE!",
    ({ entry, position }) => {
      const value = goodArguments(entry.id)[position];
      const seen = outcome(entry, given(entry.id, position, [[value, value]]));
      expect(seen).toMatchObject({ error: "#VALUE!" });
      expect(seen).toMatchObject({ message: expect.stringContaining("1 by 2") });
    },
  );

  it.each(everyArgument.filter(({ argument }) => argument.list))(
    "$entry.id: the cell that is wrong is named by its row and column in $argument.name",
    ({ entry, argument, position }) => {
      const one = (goodArguments(entry.id)[position] as unknown[][])[0]?.[0];
      for (const [range, place] of [
        [[[one], ["?"]], /row 2 column 1\b/i],
        [[[one, "?"]], /row 1 column 2\b/i],
      ] as const) {
        const seen = outcome(entry, given(entry.id, position, range));
        expect(seen).toMatchObject({ message: expect.stringMatching(place) });
        expect(seen).toMatchObject({ message: expect.stringContaining(argument.name) });
      }
    },
  );

  it("names the row and column of the cell that is wrong inside a range", () => {
    const seen = call(
      "CORRECTED",
      [
        [2.4, 2.5],
        [2.4, "2,5"],
      ],
      null,
    );
    expect(seen).toMatchObject({ message: expect.stringContaining("row 2 column 2") });
  });

  it("lets the first problem win, in the order of the arguments", () => {
    const seen = call("FFAPERCENT", -1, "x", "y", "z");
    expect(seen).toMatchObject({ message: expect.stringContaining("correctedTitre is -1") });
  });

  it.each(everyArgument.filter(({ argument }) => argument.words !== undefined && !argument.list))(
    "$entry.id: every word $argument.name takes is taken in any case, with spaces around it",
    ({ entry, argument, position }) => {
      for (const word of argument.words ?? []) {
        const plain = outcome(entry, given(entry.id, position, word));
        expect(outcome(entry, given(entry.id, position, ` ${word.toUpperCase()} `))).toEqual(plain);
        // a solid fat may refuse its temperature; nothing may fail to be understood
        expect(JSON.stringify(plain)).not.toContain("allowed is");
      }
    },
  );
});

describe("the blanks", () => {
  const corrected = (blanks: unknown) => call("CORRECTED", [[2.3]], blanks);

  it("left out, or the word, mean that the solvent was neutralised", () => {
    for (const blanks of [
      null,
      undefined,
      "neutralised",
      [["Neutralized "]],
      [["", "NEUTRALISED"]],
    ]) {
      expect(corrected(blanks)).toEqual({ value: 2.3 });
    }
  });

  it("given but empty mean that there is no blank yet", () => {
    for (const blanks of [[[null]], [[""]], [[0]], [["", null, 0]], []]) {
      expect(corrected(blanks)).toMatchObject({
        error: "#N/A",
        message: "No blank yet: titrate one, or type neutralised.",
      });
    }
  });

  it("refuse the word beside a figure, and any other text", () => {
    expect(corrected([["neutralised", 0.1]])).toMatchObject({ error: "#VALUE!" });
    expect(corrected([["none"]])).toMatchObject({ error: "#VALUE!" });
  });

  it.each(["MEANACIDVALUE", "EACHACIDVALUE", "DOSE"])(
    "may be left out of %s too, with the same meaning",
    (id) => {
      const [titres, , ...rest] = goodArguments(id);
      const word = call(id, titres, "neutralised", ...rest);
      expect(word).toHaveProperty("value");
      expect(call(id, titres, null, ...rest)).toEqual(word);
    },
  );

  it.each(["CORRECTED", "MEANACIDVALUE", "EACHACIDVALUE", "DOSE"])(
    "are compared with each titre in %s: smaller or equal is refused with both figures",
    (id) => {
      const [, , ...rest] = goodArguments(id);
      const below = call(id, [[0.9, 0.5, 0.9]], [[0.6]], ...rest);
      expect(below).toMatchObject({ error: "#VALUE!", message: expect.stringContaining("0.5 mL") });
      const equal = call(id, [[0.9, 0.6, 0.9]], [[0.6]], ...rest);
      expect(equal).toMatchObject({ message: expect.stringContaining("take a larger sample") });
    },
  );
});
