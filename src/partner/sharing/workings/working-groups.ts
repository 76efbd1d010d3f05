/** Formulas that go through helper cells, in the groups and the order of the added sheet. */
import { columnLetters } from "../../../sheet/cell-name";
import { namespace } from "../../../functions/names";
import type { Instance } from "./instance";
import { cornerOf } from "../pieces";
import { sheetPrefix } from "../../../sheet/sheet-prefix";
import type { FormulaTemplate } from "./template";

export interface Helped extends Instance {
  readonly template: FormulaTemplate;
}

/** Formulas of one column that are the same but for their row, from the top. */
export type Run = readonly Helped[];

export interface Group {
  readonly title: string;
  /** By column. */
  readonly labels: readonly string[];
  readonly runs: readonly Run[];
}

const isHelped = (instance: Instance): instance is Helped => {
  const { template } = instance;
  return template.kind === "formulas" && template.helpers.length + template.blocks.length > 0;
};

const labelsOf = ({ helpers, blocks }: FormulaTemplate): string[] => [
  ...helpers.map(({ label }) => label),
  ...blocks.flatMap(({ label, rows }) => (rows[0] ?? []).map((_, at) => (at === 0 ? label : ""))),
];

/** As many rows as the helper cells of a formula take. */
export const heightOf = ({ template }: Helped): number =>
  Math.max(1, ...template.blocks.map(({ rows }) => rows.length));

/** A cell in the row of the formula, as the added sheet writes it; undefined where it has none. */
export function ownRowCell({ template, pieces, home }: Helped): string | undefined {
  const { ownRow } = template;
  if (!ownRow || home.isFixed || home.label !== undefined) return undefined;
  const row = String(home.row + 1);
  if ("column" in ownRow) return `${sheetPrefix(home.sheet)}$${columnLetters(ownRow.column)}${row}`;
  const piece = pieces[ownRow.piece] ?? "";
  return cornerOf(piece).row === home.row ? sheetPrefix(home.sheet) + piece : undefined;
}

/** The cells a formula goes by, as they are seen from its own row. */
function seenFromRow({ pieces, home }: Helped): string {
  let seen = String(home.column);
  for (const piece of pieces) {
    const { row, column, rowDollar } = cornerOf(piece);
    seen += rowDollar
      ? ` ${String(column)}$${String(row)}`
      : ` ${String(column)},${String(row - home.row)}`;
  }
  return seen;
}

interface Growing {
  readonly title: string;
  readonly labels: readonly string[];
  readonly runs: Map<string, Helped[]>;
}

function groupOf({ template, home }: Helped, groups: Map<string, Growing>): Growing {
  const isCell = home.label === undefined;
  const labels = labelsOf(template);
  const key = JSON.stringify([isCell ? home.sheet : "", template.ids, labels]);
  const known = groups.get(key);
  if (known) return known;
  const names = template.ids.map((id) => `${namespace}.${id}`).join(", ");
  const title = `${isCell ? home.sheet : "Names and rules"}: ${names}`;
  const made: Growing = { title, labels, runs: new Map() };
  groups.set(key, made);
  return made;
}

const byPlace = (a: Instance, b: Instance): number =>
  a.home.column - b.home.column || a.home.row - b.home.row;

export function groupsOf(instances: readonly Instance[]): Group[] {
  const groups = new Map<string, Growing>();
  const known = new Map<FormulaTemplate, { readonly group: Growing; readonly number: number }>();
  for (const instance of instances) {
    if (!isHelped(instance)) continue;
    const { template } = instance;
    let own = known.get(template);
    if (!own) known.set(template, (own = { group: groupOf(instance, groups), number: known.size }));
    const key = `${String(own.number)} ${seenFromRow(instance)}`;
    const run = own.group.runs.get(key);
    if (run) run.push(instance);
    else own.group.runs.set(key, [instance]);
  }
  return [...groups.values()].map(({ title, labels, runs }) => ({
    title,
    labels,
    runs: [...runs.values()]
      .map((run) => run.sort(byPlace))
      .sort((a, b) => byPlace(a[0] as Helped, b[0] as Helped)),
  }));
}
