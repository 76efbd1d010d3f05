/** "2,710 g" may be read as 2.71 g, and the pane itself takes it for doubtful: no figure shown has such a mark. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { counted } from "../../src/sheet/counted";
import { amount, amountTo, poundsText } from "../../src/taskpane/batch/amount-text";
import { readTyped } from "../../src/taskpane/widgets/typed-number";
import { exact } from "../../src/core/exact/exact";
import { as } from "../../src/core/quantity/quantity";
import { codeOf, filesUnder } from "./sources-of";

/** What a grown figure is written by. */
const grouping = /toLocaleString\(|useGrouping|"#,##0/;

/** Those of somebody's own file are shown as it says. */
const ofAFile = /^src\/(xlsx\/read\/number-formats|workbench\/engine\/standard\/number-text)\.ts$/;

/** A person at a command line reads tables of measurements. */
const isPane = (path: string): boolean => !path.startsWith("src/cli/") && !ofAFile.test(path);

/** Digits parted in threes by a comma, in a sentence: a formula's arguments stand without spaces. */
const parted = /(?<![\d,.({])[1-9]\d{0,2}(,\d{3})+(?![\d,)}])/;
/** The figure that is asked about, as somebody wrote it. */
const asked = /what the comma of 1,250 parts/;

const code = filesUnder("src")
  .filter(({ path }) => isPane(path))
  .map((file) => [file.path, codeOf(file)] as const);

describe("a figure that is shown", () => {
  it("is what the pane reads when it is typed as it stands", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e9 }),
        fc.constantFrom(".", ",") as fc.Arbitrary<"." | ",">,
        (thousandths, mark) => {
          const value = exact(thousandths).div(1000);
          for (const [text, shown] of [
            [amountTo(value, 3, mark), value],
            [amount(value.floor(), mark), value.floor()],
            [amount(value.times(1000), mark), value.times(1000)],
          ] as const) {
            const read = readTyped(text, mark);
            // "1.234" alone may be two figures, as a person may have meant it
            if (read.kind === "ambiguous")
              expect(read.small.replace(",", ".")).toBe(value.toFixed(3));
            else
              expect(
                read.kind === "number" &&
                  Math.abs(
                    read.value.div(shown.gt(0) ? shown : 1).toNumber() - (shown.gt(0) ? 1 : 0),
                  ) < 1e-3,
              ).toBe(true);
          }
          expect(poundsText(as("g", value.times(1000)), mark)).not.toMatch(parted);
          expect(counted(thousandths, "row")).toBe(
            `${String(thousandths)} ${thousandths === 1 ? "row" : "rows"}`,
          );
        },
      ),
    );
  });

  it("is written by nothing that parts its digits", () => {
    expect(code.filter(([, text]) => grouping.test(text)).map(([path]) => path)).toEqual([]);
  });

  it("has no comma between its thousands in any sentence", () => {
    const found = code.flatMap(([path, text]) =>
      text
        .split("\n")
        .flatMap((line) =>
          parted.test(line) && !asked.test(line) ? [`${path}: ${line.trim()}`] : [],
        ),
    );
    expect(found).toEqual([]);
  });
});
