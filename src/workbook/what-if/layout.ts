/**
 * The what-if table as cells: what is the same for all doses above it, what is compared across its
 * head, batch sizes down, and one formula for every dose. Every figure stands in a cell of its own.
 */
import { caution } from "../../core/batch/cautions";
import type { Gram } from "../../core/quantity/quantity";
import { isProblem } from "../../core/problem/problem";
import type { Area, Place } from "../../sheet/area";
import type { BookCell } from "../../sheet/book";
import type { Doses } from "./doses";
import { usedAllTheSameWords } from "../record/worth";
import { figureCell, type FigureId, figuresAcross } from "./dose-inputs";
import { formatOf, placesFor } from "./format";
import { inputsOf } from "./cells-above";
import { tableName } from "./names";
import type { WhatIfQuestion } from "./question";
import { Refer } from "./reference";

/** A cell, and what it is called in a plan. */
export interface LaidCell extends BookCell {
  readonly name: string;
}

type Row = readonly (LaidCell | null)[];

export interface Layout {
  /** Rows of one width, from the table's first cell on. */
  readonly rows: readonly Row[];
  /** Counted from the table's first cell: the doses, and the sizes and masses beside them. */
  readonly doses: Area;
  readonly sizes: Area;
  readonly masses: Area;
  /** Row of the words above sizes and doses. */
  readonly headings: number;
}

/** Batch size, and kilograms of oil. The doses follow. */
const columnsBefore = 2;

const words = (name: string, value: string, style: BookCell["style"] = "words"): LaidCell => ({
  name,
  value,
  style,
});
const named = (cell: BookCell | null, name: string): LaidCell | null => cell && { ...cell, name };

/** Why results are not worth a dose yet that are used for all that; each once. */
const usedAllTheSame = ({ columns }: WhatIfQuestion): string[] => [
  ...new Set(columns.flatMap(({ acid }) => acid.usedAllTheSame ?? [])),
];

/** Title, guidance and the cautions. */
const top = (question: WhatIfQuestion): Row[] => [
  [words("Title", `Catalyst, g as weighed: ${tableName(question)}`, "title")],
  [
    words(
      "How to use it",
      "Change a pale yellow cell and every dose follows. #VALUE! says why when its cell is selected: above the limit, as a rule.",
    ),
  ],
  [words("Caution", caution("permission"), "caution")],
  ...usedAllTheSame(question).map((why): Row => [
    words("Used all the same", usedAllTheSameWords(why), "caution"),
  ]),
];

const known = (rows: Doses["rows"]): Gram[] =>
  rows.flat().flatMap((each) => (isProblem(each) ? [] : [each]));

export function layout(question: WhatIfQuestion, doses: Doses, origin: Place): Layout {
  const { sizes, by, columns } = question;
  const refer = new Refer(origin);
  const above = top(question);
  const inputs = inputsOf(question, refer, above.length);
  const across = figuresAcross(by, columns);
  const firstAcross = above.length + inputs.all.length + 1;
  const headings = firstAcross + across.length;
  const body = headings + 1;
  const formats = {
    mass: formatOf(placesFor(doses.masses)),
    dose: formatOf(placesFor(known(doses.rows))),
  };

  /** Where a column finds a figure: across the head, or above the table. */
  const figureAt = (id: FigureId, column: number): string => {
    const place = across.findIndex((each) => each.id === id);
    return place < 0 ? inputs.at(id) : refer.inRow(firstAcross + place, column);
  };
  const mass = (row: number): LaidCell => ({
    name: "Oil, kg",
    formula: `=TITRE.OILMASS(${[refer.inColumn(row, 0), inputs.at("unit"), inputs.at("oil"), inputs.at("temperature")].join(",")})`,
    format: formats.mass,
    style: "calculated",
  });
  const dose = (row: number, column: number): LaidCell => {
    const figures = (["acid", "base", "assay", "charge"] as const).map((id) =>
      figureAt(id, column),
    );
    return {
      name: "Catalyst, g",
      formula: `=TITRE.CATALYST(${[refer.inColumn(row, 1), ...figures, inputs.at("limit")].join(",")})`,
      format: formats.dose,
      style: "calculated",
    };
  };

  const head: Row[] = across.map(({ id, label, unit }) => [
    words("Label", label, "heading"),
    words("Label", unit, "heading"),
    ...columns.map((column, each) => {
      const beside = (other: FigureId): string => figureAt(other, columnsBefore + each);
      return named(figureCell(id, column, beside), label);
    }),
  ]);
  const rows: Row[] = [
    ...above,
    // the figure first: its words run on over the empty cells beside it, however narrow they are
    ...inputs.all.map(({ label, cell }) => [named(cell, label), words("Label", label)]),
    [],
    ...head,
    [
      { name: "Heading", formula: `="Batch size, "&${inputs.at("unit")}`, style: "heading" },
      words("Heading", "Oil, kg", "heading"),
      ...columns.map(() => words("Heading", "Catalyst, g", "heading")),
    ],
    ...sizes.map((size, index): Row => {
      const row = body + index;
      return [
        { name: "Batch size", value: size.toNumber(), style: "input" },
        mass(row),
        ...columns.map((_, each) => dose(row, columnsBefore + each)),
      ];
    }),
  ];
  const width = columnsBefore + columns.length;
  const down = (column: number, count: number): Area => ({
    row: body,
    column,
    rows: sizes.length,
    columns: count,
  });
  return {
    rows: rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? null)),
    headings,
    sizes: down(0, 1),
    masses: down(1, 1),
    doses: down(columnsBefore, columns.length),
  };
}
