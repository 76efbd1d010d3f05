/** The cells that go by the day or the time, or read such a one. */
import { goesByTheClock } from "../trust/by-the-clock";
import { keyAt } from "./cell-keys";
import { reading } from "./follow";
import { type Asked, put } from "./marks";
import { templateOf } from "./template";

type RefersTo = (name: string, sheet: string) => string | undefined;

export function clockCells(
  asked: readonly Asked[],
  refersTo: RefersTo,
): (sheet: string, row: number, column: number) => boolean {
  const known = new Map<string, boolean>();
  const from = asked.filter(({ sheet, formula }) => {
    const name = `${sheet}\n${templateOf(formula)}`;
    let found = known.get(name);
    if (found === undefined) {
      found = goesByTheClock(formula, (given) => refersTo(given, sheet));
      known.set(name, found);
    }
    return found;
  });
  const all = reading(asked, from, (each) => each.reads);
  for (const { sheet, row, column } of from) put(all, sheet, keyAt(row, column), true);
  return (sheet, row, column) => all.get(sheet)?.has(keyAt(row, column)) ?? false;
}
