import { describe, expect, it } from "vitest";
import { sentence } from "../../src/workbench/announcer";
import type { SelectedCell } from "../../src/workbench/selection";

const cell = (about: Partial<SelectedCell>): SelectedCell => ({
  sheet: "Batches",
  address: "L4",
  formula: "",
  value: null,
  shown: "",
  note: "",
  lookup: () => undefined,
  ...about,
});

describe("what is said of the selected cell", () => {
  it("says an empty cell in words", () => expect(sentence(cell({}))).toBe("Batches L4. empty."));

  it("names columns of this row without the table around them", () =>
    expect(
      sentence(
        cell({
          value: 91.5,
          shown: "91.50",
          formula: "=TITRE.OILMASS(Batches[[#This Row],[Amount]],Batches[[#This Row],[Unit]])",
        }),
      ),
    ).toBe("Batches L4. 91.50. formula TITRE.OILMASS([Amount],[Unit])."));

  it("says why a cell shows an error", () =>
    expect(
      sentence(
        cell({
          value: { type: "Error", basicValue: "#VALUE!" },
          error: "#VALUE!",
          shown: "#VALUE!",
          formula: "=TITRE.CORRECTED(A1)",
          lookup: () => [["lots"]],
        }),
      ),
    ).toMatch(/^Batches L4\. #VALUE!\. .*"lots".*\. formula TITRE\.CORRECTED\(A1\)\.$/));

  it("says why a formula of the spreadsheet itself shows an error", () =>
    expect(
      sentence(
        cell({
          error: "#DIV/0!",
          shown: "#DIV/0!",
          formula: "=1/B2",
          lookup: () => [[0]],
        }),
      ),
    ).toBe(
      "Batches L4. #DIV/0!. Something is divided by 0, or by a cell that is empty. formula 1/B2.",
    ));

  it("says that a result is not saved", () =>
    expect(sentence(cell({ shown: "2", formula: "=LEN(A1)", doubt: "It is not saved." }))).toBe(
      "Batches L4. 2. formula LEN(A1). It is not saved.",
    ));

  it("names the cell that a spilled value comes from", () =>
    expect(
      sentence(cell({ value: 2.4, shown: "2.4", spilledFrom: { address: "L3", formula: "=X" } })),
    ).toBe("Batches L4. 2.4. from the formula in L3."));
});
