/**
 * The sheet that a partner copy adds: the helper cells of its plain formulas. A row for each formula,
 * under a heading that says what each figure is; formulas of one kind stand together, in the order of
 * their own rows, so that sorting or filling down keeps them and their helper cells together.
 */
import { columnLetters } from "../../../sheet/cell-name";
import { limits } from "../../../xlsx/limits";
import type { PlainCell, PlainRow } from "../../../xlsx/patch/plain-sheet";
import { refuse } from "../../../xlsx/problem";
import { firstHelperColumn, rowColumn } from "./builder";
import type { Instance } from "./instance";
import { shownHome } from "./standing";
import { Places } from "./places";
import { type FormulaTemplate, written } from "./template";
import { type Group, groupsOf, heightOf, type Helped, ownRowCell } from "./working-groups";

export interface WorkingStyles {
  readonly title: number;
  readonly words: number;
  readonly heading: number;
  readonly calculated: number;
}

const intro = [
  "Workings",
  "The plain formulas of this copy go through these cells, a row for each formula. Nothing is typed here: it all follows from the other sheets.",
];

/** Title and heading of a group, and an empty row before it. */
const above = 3;

const cellsOf = ({ helpers, blocks }: FormulaTemplate): number =>
  helpers.length + blocks.reduce((sum, { rows }) => sum + rows.flat().length, 0);

const width = 18;
/** In bold a line takes fewer letters than the column is wide, and words are not broken. */
const lettersInLine = 14;
const headingHeight = (labels: readonly string[]): number =>
  15 * Math.max(1, ...labels.map(({ length }) => Math.ceil(length / lettersInLine)));

export class Workings {
  private readonly groups: readonly Group[];
  readonly helperCells: number;

  /** Gives every formula its room. */
  constructor(instances: readonly Instance[]) {
    this.groups = groupsOf(instances);
    const places = new Places(intro.length);
    let cells = 0;
    for (const { runs } of this.groups) {
      places.skip(above);
      for (const members of runs) {
        places.settle(members);
        for (const { template } of members) cells += cellsOf(template);
      }
    }
    if (places.next > limits.rows || cells > limits.cells) refuse({ code: "too-many-cells" });
    this.helperCells = cells;
  }

  get isEmpty(): boolean {
    return this.groups.length === 0;
  }

  /** Widths of its columns, in characters. */
  get widths(): number[] {
    const columns = Math.max(0, ...this.groups.map(({ labels }) => labels.length));
    return [24, 8, ...Array.from({ length: columns }, () => width)];
  }

  /** One after the other, since there can be very many. */
  *rows(styles: WorkingStyles): Generator<PlainRow> {
    for (const [row, text] of intro.entries()) {
      yield { row, cells: [{ column: 0, style: row === 0 ? styles.title : 0, text }] };
    }
    for (const { title, labels, runs } of this.groups) {
      const first = runs[0]?.[0]?.room.row ?? 0;
      yield { row: first - 2, cells: [{ column: 0, style: styles.title, text: title }] };
      const headings = ["For", "Row", ...labels];
      yield {
        row: first - 1,
        cells: headings.map((text, column) => ({ column, style: styles.heading, text })),
        height: headingHeight(labels),
      };
      for (const members of runs) for (const member of members) yield* rowsFor(member, styles);
    }
  }
}

function rowsFor(instance: Helped, { calculated }: WorkingStyles): PlainRow[] {
  const { template, room, home } = instance;
  const lines: PlainCell[][] = Array.from({ length: heightOf(instance) }, () => []);
  const cell = ownRowCell(instance);
  // The row is told by the program, since rows may be put in or taken out.
  const shown =
    cell === undefined ? shownHome(home) : `${home.sheet}, column ${columnLetters(home.column)}`;
  lines[0]?.push({ column: 0, style: 0, text: shown });
  if (cell !== undefined) {
    lines[0]?.push({ column: rowColumn, style: 0, formula: `ROW(${cell})` });
  }
  let column = firstHelperColumn;
  for (const { parts, isArray } of template.helpers) {
    const formula = written(parts, instance, "workings");
    lines[0]?.push({ column, style: calculated, formula, isArray });
    column += 1;
  }
  for (const { rows } of template.blocks) {
    for (const [down, row] of rows.entries()) {
      for (const [across, parts] of row.entries()) {
        const formula = written(parts, instance, "workings");
        lines[down]?.push({ column: column + across, style: calculated, formula });
      }
    }
    column += rows[0]?.length ?? 0;
  }
  return lines.map((cells, down) => ({ row: room.row + down, cells }));
}
