/**
 * The sheet that a partner copy adds: the helper cells of its plain formulas. A row for each formula,
 * under a heading that says what each figure is; formulas of one kind stand together, in the order of
 * their own rows, so that sorting or filling down keeps them and their helper cells together.
 */
import { namespace } from "../../functions/catalogue";
import { columnLetters } from "../column-letters";
import { limits } from "../xlsx/limits";
import type { PlainCell, PlainRow } from "../xlsx/patch/plain-sheet";
import { refuse } from "../xlsx/problem";
import { firstHelperColumn, rowColumn } from "./builder";
import { type Instance, shownHome } from "./instance";
import { cornerOf } from "./pieces";
import { sheetPrefix } from "./sheet-prefix";
import { type FormulaTemplate, written } from "./template";

export interface WorkingStyles {
  readonly title: number;
  readonly words: number;
  readonly heading: number;
  readonly calculated: number;
}

interface Helped extends Instance {
  readonly template: FormulaTemplate;
}

interface Group {
  readonly title: string;
  /** By column. */
  readonly labels: readonly string[];
  readonly members: Helped[];
}

const isHelped = (instance: Instance): instance is Helped => {
  const { template } = instance;
  return template.kind === "formulas" && template.helpers.length + template.blocks.length > 0;
};

const labelsOf = ({ helpers, blocks }: FormulaTemplate): string[] => [
  ...helpers.map(({ label }) => label),
  ...blocks.flatMap(({ label, rows }) => (rows[0] ?? []).map((_, at) => (at === 0 ? label : ""))),
];

function groupsOf(instances: readonly Instance[]): Group[] {
  const groups = new Map<string, Group>();
  const keys = new Map<FormulaTemplate, string>();
  for (const instance of instances) {
    if (!isHelped(instance)) continue;
    const { template, home } = instance;
    let key = keys.get(template);
    if (key === undefined) {
      key = JSON.stringify([
        home.label === undefined ? home.sheet : "",
        template.ids,
        labelsOf(template),
      ]);
      keys.set(template, key);
    }
    const group = groups.get(key);
    if (group) group.members.push(instance);
    else {
      const names = template.ids.map((id) => `${namespace}.${id}`).join(", ");
      const title = `${home.label === undefined ? home.sheet : "Names and rules"}: ${names}`;
      groups.set(key, { title, labels: labelsOf(template), members: [instance] });
    }
  }
  return [...groups.values()];
}

const inOrder = (a: Instance, b: Instance): number =>
  a.home.column - b.home.column || a.home.row - b.home.row;

const heightOf = ({ template }: Helped): number =>
  Math.max(1, ...template.blocks.map(({ rows }) => rows.length));

/** A cell in the row of the formula, as the added sheet writes it; undefined where it has none. */
function ownRowCell({ template, pieces, home }: Helped): string | undefined {
  const { ownRow } = template;
  if (!ownRow || home.isFixed || home.label !== undefined) return undefined;
  const row = String(home.row + 1);
  if ("column" in ownRow) return `${sheetPrefix(home.sheet)}$${columnLetters(ownRow.column)}${row}`;
  const piece = pieces[ownRow.piece] ?? "";
  return cornerOf(piece).row === home.row ? sheetPrefix(home.sheet) + piece : undefined;
}

const intro = [
  "Workings",
  "The plain formulas of this copy go through these cells, a row for each formula. Nothing is typed here: it all follows from the other sheets.",
];

/** Title and heading of a group, and an empty row before it. */
const above = 3;

/** Formulas of one column, under one heading: each is told where all of them are. */
function tellSiblings(members: readonly Helped[]): void {
  let first = 0;
  for (const [at, member] of members.entries()) {
    if (members[at + 1]?.home.column === member.home.column) continue;
    const column = members.slice(first, at + 1);
    first = at + 1;
    const rows = [column[0]?.room.row ?? 0, member.room.row] as const;
    if (column.length === 1) continue;
    for (const each of column) {
      if (ownRowCell(each) !== undefined) each.room = { row: each.room.row, siblings: rows };
    }
  }
}

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
    let row = intro.length;
    let cells = 0;
    for (const { members } of this.groups) {
      row += above;
      members.sort(inOrder);
      for (const member of members) {
        member.room = { row, siblings: undefined };
        row += heightOf(member);
        const { helpers, blocks } = member.template;
        cells += helpers.length;
        for (const block of blocks) cells += block.rows.flat().length;
      }
      tellSiblings(members);
    }
    if (row > limits.rows || cells > limits.cells) refuse({ code: "too-many-cells" });
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
    for (const { title, labels, members } of this.groups) {
      const first = members[0]?.room.row ?? 0;
      yield { row: first - 2, cells: [{ column: 0, style: styles.title, text: title }] };
      const headings = ["For", "Row", ...labels];
      yield {
        row: first - 1,
        cells: headings.map((text, column) => ({ column, style: styles.heading, text })),
        height: headingHeight(labels),
      };
      for (const member of members) yield* rowsFor(member, styles);
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
