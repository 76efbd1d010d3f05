/**
 * A small calculation for the memory host: our functions from the catalogue, and what the formulas of
 * the logbook tables need beside them. Anything else is #NAME?, so that no test leans on it.
 */
import { isProblem } from "../../src/core/problem/problem";
import { functionNamed } from "../../src/functions/catalogue";
import type { CellContent } from "../../src/sheet/port";
import type { Calculation, Surroundings } from "./memory/answers";
import type { CellPlace } from "../../src/sheet/port";
import { plainName, titreCallId } from "../../src/sheet/formula/names";
import { readFormula } from "../../src/sheet/formula/read";
import type { Binary, Call, Expression, Omitted } from "../../src/sheet/formula/tree";
import { errorOf } from "../../src/workbook/explain/value";
import { meant } from "./meant";

/** Rows of values; one value is one row of one. Undefined where an argument is left out. */
type Values = CellContent[][];

const one = (value: CellContent): Values => [[value]];
const error = (code: string): Values => one({ error: code });
const first = (values: Values): CellContent => values[0]?.[0] ?? "";

const number = (value: CellContent): number => (value === "" ? 0 : Number(value));

function isSame(a: CellContent, b: CellContent): boolean {
  return typeof a === "string" && typeof b === "string"
    ? a.toLowerCase() === b.toLowerCase()
    : number(a) === number(b);
}

const operators: Record<string, (a: CellContent, b: CellContent) => CellContent> = {
  "+": (a, b) => number(a) + number(b),
  "-": (a, b) => number(a) - number(b),
  "*": (a, b) => number(a) * number(b),
  "/": (a, b) => (number(b) === 0 ? { error: "#DIV/0!" } : number(a) / number(b)),
  "^": (a, b) => number(a) ** number(b),
  "&": (a, b) => (typeof a === "object" || typeof b === "object" ? "" : `${a}${b}`),
  "=": isSame,
  "<>": (a, b) => !isSame(a, b),
  ">=": (a, b) => number(a) >= number(b),
  ">": (a, b) => number(a) > number(b),
  "<=": (a, b) => number(a) <= number(b),
  "<": (a, b) => number(a) < number(b),
};

class Working {
  constructor(
    private readonly from: CellPlace,
    private readonly around: Surroundings,
  ) {}

  of(part: Expression | Omitted): Values {
    switch (part.kind) {
      case "omitted":
        return one("");
      case "number":
      case "text":
      case "boolean":
        return one(part.value);
      case "error":
        return error(part.value);
      case "reference":
        return this.reference(part.text);
      case "array":
        return part.rows.map((row) => row.map((each) => first(this.of(each))));
      case "binary":
        return this.binary(part);
      case "call":
        return this.call(part);
      case "prefix":
        if (part.operator === "@") return one(first(this.of(part.operand)));
        return this.of(part.operand).map((row) => row.map((each) => -number(each)));
      default:
        return error("#NAME?");
    }
  }

  private reference(text: string): Values {
    const block = meant(text, this.from, this.around);
    if (!block) return error("#REF!");
    return Array.from({ length: block.rows }, (_, row) =>
      Array.from({ length: block.columns }, (__, column) =>
        this.around.valueAt({
          sheet: block.sheet,
          row: block.row + row,
          column: block.column + column,
        }),
      ),
    );
  }

  private binary({ operator, left, right }: Binary): Values {
    const [a, b] = [this.of(left), this.of(right)];
    const work = operators[operator];
    if (!work) return error("#NAME?");
    const longer = a.length >= b.length ? a : b;
    return longer.map((row, r) =>
      row.map((_, c) => {
        const [x, y] = [a, b].map((each) => each[each.length > 1 ? r : 0]?.[c] ?? first(each));
        const wrong = [x, y].find((each) => typeof each === "object");
        return wrong ?? work(x ?? "", y ?? "");
      }),
    );
  }

  private call(call: Call): Values {
    const id = titreCallId(call);
    if (id !== undefined) return this.ours(id, call);
    const given = call.arguments;
    switch (plainName(call.name)) {
      case "IF": {
        const [test, then, otherwise] = given;
        const chosen = test && first(this.of(test)) === true ? then : otherwise;
        return chosen ? this.of(chosen) : one(false);
      }
      case "OR":
        return one(given.some((each) => first(this.of(each)) === true));
      case "AND":
        return one(given.every((each) => first(this.of(each)) === true));
      case "NOT":
        return one(given.every((each) => first(this.of(each)) !== true));
      case "COUNTIF":
      case "COUNTIFS":
        return one(this.rowsWhere(given).filter(Boolean).length);
      case "SUMIFS": {
        const [summed, ...criteria] = given;
        const holds = this.rowsWhere(criteria);
        const values = summed ? this.of(summed).flat() : [];
        const counted = values.filter((_, at) => holds[at] === true);
        const wrong = counted.find((each) => typeof each === "object");
        const figures = counted.filter((each) => typeof each === "number");
        return one(wrong ?? figures.reduce((sum, each) => sum + each, 0));
      }
      case "MATCH": {
        const [wanted, among] = given.map((each) => this.of(each));
        const found = (among ?? []).flat().findIndex((each) => isAlike(each, first(wanted ?? [])));
        return found < 0 ? error("#N/A") : one(found + 1);
      }
      case "IFERROR": {
        const [value, otherwise] = given;
        const found = value ? first(this.of(value)) : "";
        return typeof found === "object" && otherwise ? this.of(otherwise) : one(found);
      }
      case "N": {
        const found = given[0] ? first(this.of(given[0])) : "";
        return one(typeof found === "number" || typeof found === "object" ? found : 0);
      }
      case "SQRT": {
        const found = given[0] ? first(this.of(given[0])) : "";
        return typeof found === "object" ? one(found) : one(Math.sqrt(number(found)));
      }
      case "INT":
        return one(Math.floor(number(first(given.flatMap((each) => this.of(each))))));
      case "ROUND": {
        const [value, places] = given.map((each) => number(first(this.of(each))));
        return one(Number((value ?? 0).toFixed(places)));
      }
      case "FIXED": {
        const [value, places] = given.map((each) => number(first(this.of(each))));
        return one((value ?? 0).toFixed(places));
      }
      case "TRIM": {
        const [text = ""] = given.map((each) => first(this.of(each)));
        return one(typeof text === "object" ? text : String(text).trim().replace(/ +/g, " "));
      }
      case "ISTEXT":
        return one(given.every((each) => typeof first(this.of(each)) === "string"));
      case "ISNUMBER":
        return given.length === 1 && given[0]
          ? this.of(given[0]).map((row) => row.map((each) => typeof each === "number"))
          : error("#VALUE!");
      case "ABS":
        return one(Math.abs(number(first(given.flatMap((each) => this.of(each))))));
      case "LEFT": {
        const [text, count] = given.map((each) => first(this.of(each)));
        return one(typeof text === "object" ? text : String(text).slice(0, number(count ?? 1)));
      }
      case "SEARCH": {
        const [sought, within] = given.map((each) => String(first(this.of(each))).toLowerCase());
        const at = (within ?? "").indexOf(sought ?? "");
        return at < 0 ? error("#VALUE!") : one(at + 1);
      }
      case "MAX": {
        const values = given.flatMap((each) => this.of(each).flat());
        const wrong = values.find((each) => typeof each === "object");
        return one(wrong ?? Math.max(...values.map(number)));
      }
      case "NA":
        return error("#N/A");
      case "COUNT":
        return one(
          given.flatMap((each) => this.of(each).flat()).filter((each) => typeof each === "number")
            .length,
        );
      case "COUNTA":
        return one(
          given.flatMap((each) => this.of(each).flat()).filter((each) => each !== "").length,
        );
      case "SUM":
        return one(
          given
            .flatMap((each) => this.of(each).flat())
            .reduce<number>((sum, each) => sum + (typeof each === "number" ? each : 0), 0),
        );
      case "INDEX": {
        const [among, row, column] = given.map((each) => this.of(each));
        const at = (which: Values | undefined) => (which ? number(first(which)) : 1) - 1;
        return one(among?.[at(row)]?.[at(column)] ?? { error: "#REF!" });
      }
      case "AVERAGE": {
        const figures = given
          .flatMap((each) => this.of(each).flat())
          .filter((each) => typeof each === "number");
        const sum = figures.reduce((before, each) => before + each, 0);
        return figures.length === 0 ? error("#DIV/0!") : one(sum / figures.length);
      }
      case "LOOKUP": {
        const [wanted, among, results] = given.map((each) => this.of(each));
        // A value no smaller than any in the list finds the last number of it.
        const last = among
          ?.flat()
          .reduce<number>(
            (found, each, at) =>
              typeof each === "number" && each <= number(first(wanted ?? [])) ? at : found,
            -1,
          );
        return one(results?.flat()[last ?? -1] ?? { error: "#N/A" });
      }
      default:
        return error("#NAME?");
    }
  }

  /** Which cells of a list meet all conditions: a value, ">0", or a word with a star behind it. */
  private rowsWhere(given: Call["arguments"]): boolean[] {
    const pairs = given.flatMap((each, at) => {
      const condition = given[at + 1];
      return at % 2 === 0 && condition
        ? [{ among: this.of(each).flat(), wanted: first(this.of(condition)) }]
        : [];
    });
    return (pairs[0]?.among ?? []).map((_, at) =>
      pairs.every(({ among, wanted }) => meets(among[at] ?? "", wanted)),
    );
  }

  private ours(id: string, call: Call): Values {
    const entry = functionNamed(id);
    if (!entry) return error("#NAME?");
    const given = call.arguments.map((each) =>
      each.kind === "omitted" ? undefined : this.of(each).map((row) => row.map(cellGiven)),
    );
    // as functions/register.ts does it, in the page of the pane
    globalThis.titrebookHears?.(id, given);
    const answer = entry.evaluate(given);
    if (isProblem(answer)) return error(errorOf(answer));
    return Array.isArray(answer) ? answer : one(answer);
  }
}

const isAlike = (a: CellContent, b: CellContent): boolean => typeof a === typeof b && isSame(a, b);

function meets(value: CellContent, wanted: CellContent): boolean {
  if (wanted === ">0") return typeof value === "number" && value > 0;
  if (typeof wanted !== "string" || !wanted.endsWith("*")) return isAlike(value, wanted);
  return (
    typeof value === "string" && value.toLowerCase().startsWith(wanted.slice(0, -1).toLowerCase())
  );
}

/** As a spreadsheet hands a cell to a function. */
const cellGiven = (value: CellContent): unknown => {
  if (value === "") return null;
  return typeof value === "object" ? { type: "Error", basicValue: value.error } : value;
};

/** The same few formulas stand in many rows, and are read once. */
const readBefore = new Map<string, ReturnType<typeof readFormula>>();

export const calculation: Calculation = {
  result(formula, from, around) {
    const read = readBefore.get(formula) ?? readFormula(formula);
    readBefore.set(formula, read);
    return isProblem(read) ? { error: "#NAME?" } : first(new Working(from, around).of(read.tree));
  },
};
