/** What a maker answers in the step Check columns: what each column is, and what no column says. */
import {
  type Action,
  type LogbookState,
  reduce,
  shownTable,
} from "../../../src/taskpane/logbook/state";
import type { Column } from "./columns";
import type { Given } from "./besides";
import type { MadeLogbook } from "./logbook";

function columnActions(state: LogbookState, columns: readonly Column[]): Action[] {
  const mapped = shownTable(state)?.mapping.columns ?? [];
  return mapped.flatMap((held): Action[] => {
    const truth = columns[held.column];
    const role = truth?.role ?? "other";
    const unit = truth?.unit;
    if (held.role === role && (unit === undefined || held.unit === unit)) return [];
    return [{ do: "column", column: held.column, role, ...(unit === undefined ? {} : { unit }) }];
  });
}

const isAsSaid = (state: LogbookState, { role, unit, value }: Given): boolean => {
  const table = shownTable(state);
  const constant = table?.mapping.constants.find((each) => each.role === role);
  if (!table || constant?.from.kind !== "cell") return false;
  const { row, column } = constant.from;
  return (
    table.cells.values[row]?.[column] === value && (unit === undefined || constant.unit === unit)
  );
};

/** As it is typed: a percentage as such, whatever the cell holds; a charge for a kilogram as percent. */
function typed({ key, role, unit, value, format, is }: Given, leavesOpen: boolean): Action {
  const shown =
    format.includes("%") && typeof value === "number"
      ? String(Number((value * 100).toFixed(6)))
      : String(value);
  if (key === "strength")
    return {
      do: "typed",
      figure: "strength",
      value: shown,
      unit: unit ?? "",
      ...(leavesOpen ? {} : said(is)),
    };
  if (key === "assay") return { do: "typed", figure: "assay", value: shown };
  if (key !== "charge") return { do: "constant", role, value: shown };
  const isForKilogram = unit === "g/kg";
  return {
    do: "typed",
    figure: "charge",
    value: isForKilogram ? String(Number((Number(value) / 10).toFixed(6))) : shown,
    unit: isForKilogram ? "%" : (unit ?? ""),
    ...(leavesOpen ? {} : said(is)),
  };
}

const said = (is: Given["is"]): { basis: "pure" | "as weighed" } | object =>
  is === undefined ? {} : { basis: is };

export function answers(
  state: LogbookState,
  made: MadeLogbook,
  columns: readonly Column[],
): Action[] {
  const first = columnActions(state, columns);
  const after = first.reduce(reduce, state);
  const table = shownTable(after);
  const constants = made.asked.flatMap((given): Action[] => {
    if (!table || isAsSaid(after, given)) return [];
    // A column that says it row by row needs no answer.
    if (table.mapping.columns.some(({ role }) => role === given.role)) return [];
    return [typed(given, made.leavesOpen)];
  });
  const ofDay: Action[] =
    made.habit.blank === "once a day"
      ? [{ do: "answer", answer: { ask: "blank", means: "day" } }]
      : [];
  const bases: Action[] = made.asked.flatMap(({ role, is }): Action[] =>
    !made.leavesOpen && is !== undefined && (role === "strength" || role === "baseCharge")
      ? [{ do: "basis", role, basis: is }]
      : [],
  );
  return [...first, ...constants, ...bases, ...ofDay];
}
