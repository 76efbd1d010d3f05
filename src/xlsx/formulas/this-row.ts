/** References to a table in the long form that files hold: Log[[#This Row],[Lot]] for [@Lot]. */
import { targetOf } from "../../sheet/formula/reference";
import type { Reference } from "../../sheet/formula/tree";

const short = /\[\s*@/;

/** These marks stand in brackets of their own only behind an apostrophe, which the reader took off. */
const column = (name: string): string => `[${name.replace(/['#[\]@]/g, "'$&")}]`;

/**
 * Undefined when the reference stands as files hold it.
 * @param table the table of the cell that holds the reference
 */
export function longReference(reference: Reference, table: string | undefined): string | undefined {
  const { text, shape } = reference;
  if (shape !== "structured") return undefined;
  const isUnnamed = text.startsWith("[");
  if (!short.test(text) && !isUnnamed) return undefined;
  const target = targetOf(reference);
  if (target.kind !== "structured") return undefined;
  const name = target.table || table;
  if (name === undefined) return undefined;
  if (!short.test(text)) return name + text;
  const columns = target.columns.map(column);
  if (columns.length === 0) return `${name}[#This Row]`;
  return `${name}[[#This Row],${columns.join(":")}]`;
}
