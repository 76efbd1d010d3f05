/**
 * What answers the client: one sheet that holds a table as large as one likes, of which nothing is kept.
 * Neither a request nor an answer may be larger than the program takes on the web.
 */
import { mostBytes } from "../excel/request-size";
import { type Action, type Answer, installClient, type ObjectPath, type Request } from "./client";

/** The sheet's table: what its cells hold, headings first. */
export interface Held {
  readonly rows: number;
  readonly columns: number;
  readonly value: (row: number, column: number) => string | number;
  /** "" for none. */
  readonly formula: (row: number, column: number) => string;
}

interface Block {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** What was sent and what was answered, in bytes, for each request. */
export interface Sent {
  readonly asked: number;
  readonly answered: number;
  readonly request: Request["Body"];
}

type Paths = Request["Body"]["ObjectPaths"];

/** The cells an object of the client stands for; the whole table where it names no others. */
function blockOf(path: ObjectPath | undefined, paths: Paths, held: Held): Block {
  const whole = { row: 0, column: 0, rows: held.rows, columns: held.columns };
  if (!path) return whole;
  const given = (path.ArgumentInfo?.Arguments ?? []) as number[];
  const [row = 0, column = 0, rows = 1, columns = 1] = given;
  if (path.Name === "GetRangeByIndexes") return { row, column, rows, columns };
  if (path.Name === "GetHeaderRowRange") return { ...whole, rows: 1 };
  if (path.Name === "GetActiveCell") return { ...whole, rows: 1, columns: 1 };
  return blockOf(paths[String(path.ParentObjectPathId)], paths, held);
}

const grid = <T>({ row, column, rows, columns }: Block, at: (r: number, c: number) => T): T[][] =>
  Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => at(row + r, column + c)),
  );

const valueType = (value: string | number): string => {
  if (typeof value === "number") return "Double";
  if (value === "") return "Empty";
  return value.startsWith("#") ? "Error" : "String";
};

function loadedOf(name: string, block: Block, held: Held): unknown {
  const { value, formula } = held;
  switch (name) {
    case "values":
      return grid(block, value);
    case "formulas":
      return grid(block, (row, column) => formula(row, column) || value(row, column));
    case "valueTypes":
      return grid(block, (row, column) => valueType(value(row, column)));
    case "numberFormat":
      return grid(block, () => "General");
    case "rowIndex":
      return block.row;
    case "columnIndex":
      return block.column;
    case "rowCount":
      return block.rows;
    case "columnCount":
      return block.columns;
    case "name":
      return "Log";
    default:
      return false;
  }
}

/** As the program names what it hands over: Values for values. */
const named = (name: string): string => `${(name[0] ?? "").toUpperCase()}${name.slice(1)}`;

const lists = new Set(["Worksheets", "Tables", "Names", "Charts", "Areas"]);

/** One item of any list: a sheet, a table, a chart, a range. */
const listed = {
  Name: "Log",
  Id: "{1}",
  RowIndex: 1,
  ColumnIndex: 1,
  RowCount: 1,
  ColumnCount: 1,
};

/** What a search found is known by a name of the program's own from then on. */
const kept = "GetSpecialCellsOrNullObject";

function resultOf(action: Action, paths: Paths, held: Held): object {
  if (action.ActionType === 1 && paths[String(action.ObjectPathId)]?.Name === kept) {
    return { ActionId: action.Id, Value: { _ReferenceId: "found" } };
  }
  const block = blockOf(paths[String(action.ObjectPathId)], paths, held);
  const wanted = action.QueryInfo?.Select ?? [];
  const Value = lists.has(paths[String(action.ObjectPathId)]?.Name ?? "")
    ? { _Items: [listed] }
    : Object.fromEntries(wanted.map((name) => [named(name), loadedOf(name, block, held)]));
  return { ActionId: action.Id, Value };
}

/** Puts the client and this program where the host looks for them; what was sent is added to the list. */
export function installProgram(held: Held, newest = 21): Sent[] {
  const sent: Sent[] = [];
  installClient(newest, ({ Body: request }, asked): Answer => {
    const refused = (ErrorCode: string): Answer => ({
      HttpStatusCode: 400,
      Headers: {},
      ErrorCode,
    });
    const { Actions, ObjectPaths } = request;
    const Results = Actions.map((action) => resultOf(action, ObjectPaths, held));
    const answered = Buffer.byteLength(JSON.stringify({ Results }));
    sent.push({ asked, answered, request });
    if (asked > mostBytes) return refused("RequestPayloadSizeLimitExceeded");
    if (answered > mostBytes) return refused("ResponsePayloadSizeLimitExceeded");
    return { HttpStatusCode: 200, Headers: {}, Body: { Results } };
  });
  return sent;
}
