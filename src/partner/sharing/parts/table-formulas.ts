/**
 * Formulas of whole table columns, by which a new row fills itself. One that goes through helper cells
 * cannot stand for all rows, and is taken out: a new row then stays empty there instead of going wrong.
 */
import { splice, type Replacement } from "../../../sheet/formula/splice";
import type { Workbook } from "../../../xlsx/model";
import type { Package } from "../../../xlsx/package/package";
import { escapeText } from "../../../xlsx/xml/escape";
import { withAttribute } from "../../../xlsx/xml/tag";
import { childOf, childrenOf, type Node, readTree } from "../../../xlsx/xml/tree";
import { type Converter, mayCallUs } from "../converter";
import type { Facts, KnownTable } from "../facts";
import type { Instance } from "../workings/instance";
import type { Home } from "../workings/standing";
import type { Ledger } from "../ledger";
import type { Tally } from "../report";
import { written } from "../workings/template";

const removed = ({ start, end }: Node): Replacement => ({ start, end, text: "" });

/** The formula as it stands for all rows; undefined where it cannot. */
function forAllRows(instance: Instance): string | undefined {
  const { template } = instance;
  if (template.kind !== "formulas" || template.isTable || template.isArray) return undefined;
  if (template.helpers.length + template.blocks.length > 0) return undefined;
  return written(template.rows[0]?.[0] ?? [], instance, "here");
}

/** What becomes of a column's formula. */
interface Outcome {
  unfilled(): void;
  filledBy(formula: string): void;
}

function columnChanged(
  node: Node,
  home: Home,
  converter: Converter,
  outcome: Outcome,
): Replacement[] {
  const instance = mayCallUs(node.text) ? converter.instance(node.text, home) : undefined;
  if (!instance || instance.template.kind === "left") return [];
  const formula = forAllRows(instance);
  if (formula !== undefined) {
    outcome.filledBy(formula);
    return [{ start: node.openEnd, end: node.closeStart, text: escapeText(formula) }];
  }
  outcome.unfilled();
  return [removed(node)];
}

/** The formula below a column: the cell has its own, so the table need not say it again. */
function totalChanged(text: string, column: Node): Replacement[] {
  const node = childOf(column, "totalsRowFormula");
  if (!node || !mayCallUs(node.text)) return [];
  const { start, openEnd: end } = column;
  const tag = withAttribute(text.slice(start, end), "totalsRowFunction", undefined);
  return [{ start, end, text: tag }, removed(node)];
}

/** The formula of a column of a table, by the part that holds it. */
const columnFormula =
  (part: string, index: number) =>
  ({ sheets }: Workbook): string | undefined =>
    sheets.flatMap(({ tables }) => tables).find((table) => table.part === part)?.columns[index]
      ?.formula;

function changeTable(
  file: Package,
  table: KnownTable,
  converter: Converter,
  tally: Tally,
  ledger: Ledger,
): void {
  const text = file.need(table.part);
  if (!mayCallUs(text)) return;
  const root = readTree(table.part, text);
  const columns = childrenOf(childOf(root, "tableColumns"), "tableColumn");
  const changes = columns.flatMap((column, index) => {
    const { area, sheet, hasHeadings, columns: known } = table;
    const row = area.row + (hasHeadings ? 1 : 0);
    const home: Home = { sheet, row, column: area.column + index, isFixed: false };
    const heading = `${table.name}[${known[index]?.heading ?? ""}]`;
    const node = childOf(column, "calculatedColumnFormula");
    const own = node
      ? columnChanged(node, home, converter, {
          unfilled() {
            tally.unfilled.push(heading);
          },
          filledBy(formula) {
            ledger.other(heading, formula, columnFormula(table.part, index));
          },
        })
      : [];
    return [...own, ...totalChanged(text, column)];
  });
  if (changes.length > 0) file.set(table.part, splice(text, changes));
}

export function changeTables(
  file: Package,
  facts: Facts,
  converter: Converter,
  tally: Tally,
  ledger: Ledger,
): void {
  for (const table of facts.tables) changeTable(file, table, converter, tally, ledger);
}
