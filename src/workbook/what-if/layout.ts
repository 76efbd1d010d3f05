/**
 * The what-if table as cells: what is the same for all doses above it, what is compared across its
 * head, batch sizes down, and one formula for every dose. Every figure stands in a cell of its own.
 */
import { cautions } from "../../core/batch/cautions";
import type { Gram } from "../../core/quantity/quantity";
import { isProblem } from "../../core/problem/problem";
import type { BookArea, BookCell } from "../book";
import type { Doses } from "./doses";
import { figureCell, type FigureId, figuresAbove, figuresAcross } from "./figures";
import { formatOf, placesFor } from "./format";
import { tableName } from "./names";
import type { WhatIfQuestion } from "./question";
import { type Origin, Refer } from "./reference";

/** Batch size, and kilograms of oil. The doses follow. */
const columnsBefore = 2;

/** A cell, and what it is called in a plan. */
export interface LaidCell extends BookCell {
  readonly name: string;
}

export interface Layout {
  /** Rows of one width, from the table's first cell on. */
  readonly rows: readonly (readonly (LaidCell | null)[])[];
  /** Counted from the table's first cell: the doses, and the sizes and masses beside them. */
  readonly doses: BookArea;
  readonly sizes: BookArea;
  readonly masses: BookArea;
  /** Row of the words above sizes and doses. */
  readonly headings: number;
}

const words = (name: string, value: string, style: BookCell["style"] = "words"): LaidCell => ({
  name,
  value,
  style,
});

const known = (rows: Doses["rows"]): Gram[] =>
  rows.flat().flatMap((each) => (isProblem(each) ? [] : [each]));

interface Input {
  readonly id: FigureId | "unit" | "oil" | "temperature" | "limit";
  readonly label: string;
  readonly cell: BookCell | null;
}

export function layout(question: WhatIfQuestion, doses: Doses, origin: Origin): Layout {
  const { sizes, unit, by, columns, oilCell, temperature, limitFfa } = question;
  const refer = new Refer(origin);
  const above = figuresAbove(by, columns);
  const across = figuresAcross(by, columns);
  const [first] = columns;
  if (!first) throw new RangeError("a table without columns");

  const firstInput = 3;
  const given = (value: string | number): BookCell => ({ value, style: "input" });
  const oilValue = typeof oilCell === "boolean" ? String(oilCell) : oilCell;
  const order: Input["id"][] = [
    "unit",
    "oil",
    "temperature",
    ...above.map(({ id }) => id),
    "limit",
  ];
  const fixed = (id: Input["id"]): string => refer.fixed(firstInput + order.indexOf(id), 0);
  const inputs: Input[] = [
    {
      id: "unit",
      label: "Unit of the batch sizes: l, ml, us_gal, uk_gal, g, kg or lb",
      cell: given(unit.name),
    },
    { id: "oil", label: "Oil, or its density at 20 C, kg/L", cell: given(oilValue) },
    { id: "temperature", label: "Oil measured at, C", cell: given(temperature.toNumber()) },
    ...above.map(({ id, label }) => ({ id, label, cell: figureCell(id, first, fixed) })),
    { id: "limit", label: "No dose above, % FFA as oleic", cell: given(limitFfa.toNumber()) },
  ];

  const firstAcross = firstInput + inputs.length + 1;
  const headings = firstAcross + across.length;
  const body = headings + 1;
  const width = columnsBefore + columns.length;
  const row = (...cells: (LaidCell | null)[]): (LaidCell | null)[] => [
    ...cells,
    ...Array.from<null>({ length: width - cells.length }).fill(null),
  ];
  const named = (cell: BookCell | null, name: string): LaidCell | null => cell && { ...cell, name };

  /** Where a dose finds a figure: across the head in its own column, or above the table. */
  const figureAt = (id: FigureId, column: number): string => {
    const place = across.findIndex((each) => each.id === id);
    return place < 0 ? fixed(id) : refer.inRow(firstAcross + place, column);
  };
  const massFormat = formatOf(placesFor(doses.masses));
  const doseFormat = formatOf(placesFor(known(doses.rows)));

  const sizeRows = sizes.map((size, index) => {
    const at = body + index;
    const mass = `=TITRE.OILMASS(${refer.inColumn(at, 0)},${fixed("unit")},${fixed("oil")},${fixed("temperature")})`;
    return row(
      { name: "Batch size", value: size.toNumber(), style: "input" },
      { name: "Oil, kg", formula: mass, format: massFormat, style: "calculated" },
      ...columns.map((_, each): LaidCell => {
        const column = columnsBefore + each;
        const figures = (["acid", "base", "assay", "charge"] as const).map((id) =>
          figureAt(id, column),
        );
        const dose = `=TITRE.CATALYST(${refer.inColumn(at, 1)},${figures.join(",")},${fixed("limit")})`;
        return { name: "Catalyst, g", formula: dose, format: doseFormat, style: "calculated" };
      }),
    );
  });

  const rows = [
    row(words("Title", `Catalyst, g as weighed: ${tableName(question)}`, "title")),
    row(
      words(
        "How to use it",
        "Change a pale yellow cell and every dose follows. #VALUE! says why when its cell is selected: above the limit, as a rule.",
      ),
    ),
    row(words("Caution", cautions[0] ?? "", "caution")),
    // the figure first: its words run on over the empty cells beside it, however narrow they are
    ...inputs.map(({ label, cell }) => row(named(cell, label), words("Label", label))),
    row(),
    ...across.map(({ id, label }) =>
      row(
        words("Label", label, "heading"),
        null,
        ...columns.map((column, each) => {
          const beside = (other: FigureId): string => figureAt(other, columnsBefore + each);
          return named(figureCell(id, column, beside), label);
        }),
      ),
    ),
    row(
      { name: "Heading", formula: `="Batch size, "&${fixed("unit")}`, style: "heading" },
      words("Heading", "Oil, kg", "heading"),
      ...columns.map(() => words("Heading", "Catalyst, g", "heading")),
    ),
    ...sizeRows,
  ];
  const down = (column: number, count: number): BookArea => ({
    row: body,
    column,
    rows: sizes.length,
    columns: count,
  });
  return {
    rows,
    headings,
    sizes: down(0, 1),
    masses: down(1, 1),
    doses: down(columnsBefore, columns.length),
  };
}
