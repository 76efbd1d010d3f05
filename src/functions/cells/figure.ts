/** Turn one cell that is filled in into a figure within its limits, or say what is wrong with it. */
import { exact } from "../../core/exact/exact";
import { as, type Quantity, type Unit } from "../../core/quantity/quantity";
import type { Place } from "../../core/problem/place";
import { type Outcome, type Problem, problem } from "../../core/problem/problem";
import { numberMeant } from "../../core/problem/number-meant";
import { quoted } from "../../core/problem/quoted";
import { allowedWords, type Limits, misses, unitWords } from "../../core/reference/limits";
import type { Cell } from "./cell";

/** An error cell: #N/A passes on as #N/A, any other is named. */
export function errorProblem(error: string, argument: string, place?: Place): Problem {
  return error === "#N/A"
    ? problem({ code: "not-available", argument, place })
    : problem({ code: "error-cell", argument, error, place });
}

/** What a cell holds, for a sentence. */
export function described(cell: Cell): string {
  switch (cell.kind) {
    case "text":
      return quoted(cell.text);
    case "boolean":
      return cell.value ? "TRUE" : "FALSE";
    case "number":
      return String(cell.value);
    default:
      return "what that cell holds";
  }
}

/** A number within limits. The cell is known to be filled in. */
export function figure<U extends Unit>(
  cell: Cell,
  limit: Limits<U>,
  argument: string,
  place?: Place,
): Outcome<Quantity<U>> {
  if (cell.kind === "error") return errorProblem(cell.error, argument, place);
  if (cell.kind !== "number") {
    const hint = cell.kind === "text" ? numberMeant(cell.text) : "";
    return problem({ code: "not-a-number", argument, given: described(cell), hint, place });
  }
  const value = exact(cell.value);
  const miss = misses(value, limit);
  if (miss === undefined) return as(limit.unit, value);
  return problem({
    code: "out-of-range",
    argument,
    given: value,
    unit: unitWords(limit.unit),
    allowed: allowedWords(limit),
    hint: (miss === "below" ? limit.ifBelow : limit.ifAbove) ?? "",
    place,
  });
}
