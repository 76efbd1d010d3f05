import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { outcome } from "./outcome";

/** Every way a host has of handing over a cell in which nothing has been typed. */
const spellings: [string, unknown][] = [
  ["null", null],
  ["undefined", undefined],
  ["an empty text", ""],
  ["white space", " \t\u00a0"],
  ["zero", 0],
  ["minus zero", -0],
  ["a rich empty cell", { type: "Empty", basicValue: "" }],
  ["a rich zero", { type: "Double", basicValue: 0, numberFormat: "0.00" }],
];

/** Arguments that stand or fall together. */
const partner: Record<string, string> = {
  usualScatter: "usualFreedom",
  usualFreedom: "usualScatter",
};

const everyArgument = catalogue.flatMap((entry) =>
  entry.arguments.map((argument, position) => ({ entry, argument, position })),
);

describe("a cell that is not filled in", () => {
  it.each(everyArgument)(
    "$entry.id: $argument.name gives one answer, however the empty cell is spelt",
    ({ entry, argument, position }) => {
      const answers = spellings.map(([name, spelling]) => {
        const given = [...goodArguments(entry.id)];
        given[position] = argument.list ? [[spelling], [spelling]] : [[spelling]];
        return [name, outcome(entry, given)];
      });
      const [first] = answers;
      for (const [name, answer] of answers) expect([name, answer]).toEqual([name, first?.[1]]);
    },
  );

  it.each(everyArgument.filter(({ argument }) => argument.whenLeftOut === undefined))(
    "$entry.id: without $argument.name there is #N/A, saying what is missing",
    ({ entry, argument, position }) => {
      const given = [...goodArguments(entry.id)];
      given[position] = argument.list ? [[null, ""]] : null;
      expect(outcome(entry, given)).toMatchObject({ error: "#N/A" });
      expect(outcome(entry, given)).toMatchObject({
        message: expect.stringContaining(argument.name),
      });
    },
  );

  it.each(everyArgument.filter(({ argument }) => argument.whenLeftOut !== undefined))(
    "$entry.id: $argument.name may be left out, or taken by the call's own Invocation object",
    ({ entry, argument, position }) => {
      const given = [...goodArguments(entry.id)];
      given[position] = null;
      const other = entry.arguments.findIndex(({ name }) => name === partner[argument.name]);
      if (other >= 0) {
        // one without the other says what is missing
        expect(outcome(entry, given)).toMatchObject({
          error: "#N/A",
          message: expect.stringContaining(argument.name),
        });
        given[other] = null;
      }
      const leftOut = outcome(entry, given);
      expect(leftOut).toHaveProperty("value");
      given[position] = { functionName: entry.id, setResult: () => undefined, address: "A1" };
      expect(outcome(entry, given)).toEqual(leftOut);
    },
  );

  // blanks that are there but empty are not yet titrated
  it.each(
    everyArgument.filter(
      ({ argument }) =>
        argument.list && argument.whenLeftOut !== undefined && !argument.name.startsWith("blank"),
    ),
  )(
    "$entry.id: $argument.name without a figure in it is left out, whatever its shape",
    ({ entry, position }) => {
      const given = [...goodArguments(entry.id)];
      given[position] = null;
      const leftOut = outcome(entry, given);
      expect(leftOut).toHaveProperty("value");
      for (const range of [
        [[null]],
        [
          ["", null],
          [0, ""],
        ],
        [[""], [""], [""], [""]],
      ]) {
        given[position] = range;
        expect(outcome(entry, given)).toEqual(leftOut);
      }
    },
  );
});
