import { isProblem } from "../../core/problem/problem";
import { controlChart } from "../../core/record/control-chart";
import { controlFlags } from "../../core/record/control-flags";
import { usual } from "../../core/reference/defaults";
import { worksheetFunction } from "../define";
import { inShape } from "../shape";
import { controlArguments } from "./control-arguments";

export const CONTROLFLAGS = worksheetFunction(
  "CONTROLFLAGS",
  "Marks each value of a control chart, in the shape of the values: in control, or what is odd.",
  controlArguments,
  (given) => {
    const { values, baseline, step } = given;
    const chart = controlChart(values.filled, baseline, step, usual.controlWeight);
    if (isProblem(chart)) return chart;
    const found = controlFlags(chart);
    let value = -1;
    const marks = values.slots.map((slot) => {
      if (slot === null) return null;
      value += 1;
      return found[value] ?? null;
    });
    return inShape(values, marks);
  },
  {
    result: "in control, beyond limits, nine on one side, six rising, six falling, or empty",
    equation: "abs({values} - centre) > 3 sigma, or a run",
    notes: [
      "The first that holds: beyond 3 sigma; the ninth in a row on one side of the centre; the sixth in a row that rises, or falls. Later ones of the same run are marked too.",
    ],
    example: {
      formula: "=TITRE.CONTROLFLAGS({0.1,0.12,0.11,0.1,0.12,0.11,0.1,0.12,0.11,0.1,0.3},10,0.01)",
      gives: [[...Array<string>(10).fill("in control"), "beyond limits"]],
    },
    sources: ["nistControl", "nelson"],
  },
);
