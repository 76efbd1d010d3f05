/**
 * A small table of the day's blanks, or of titrants by the day they were made, beside the titrations: each
 * titration takes its blank from the same day, its strength from the last one made.
 */
import { columnOf, isKnown } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { endOf, heldCell, isHeld, type LogbookValue } from "../recognising/sheet-cells";
import { dateHabit } from "../recognising/date-habit";
import { dateFrom } from "../recognising/typed-date";
import { type Book, widened } from "./split-titres";

const lent: readonly (readonly [RoleId, "same day" | "last one"])[] = [
  ["blank", "same day"],
  ["molarity", "last one"],
  ["strength", "last one"],
  ["titrantBase", "last one"],
];

const titrates = ({ mapping }: Book): boolean =>
  (["titre", "meanTitre"] as const).some((role) => columnOf(mapping, role) !== undefined);

interface Dated {
  readonly day: number;
  readonly value: LogbookValue;
}

/** What a table says by the day; nothing where it has no days. */
function datedIn({ mapping, cells }: Book, role: RoleId): Dated[] {
  const column = columnOf(mapping, role);
  const date = columnOf(mapping, "date");
  if (!column || !date) return [];
  const found: Dated[] = [];
  const { order } = dateHabit(mapping, cells);
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
    const when = heldCell(cells, row, date.column);
    const day = dateFrom(when.value, when.format, order);
    const cell = heldCell(cells, row, column.column);
    if (day !== undefined && isHeld(cell)) found.push({ day, value: cell.value });
  }
  return found.sort((a, b) => a.day - b.day);
}

function lookUp(dated: readonly Dated[], how: "same day" | "last one") {
  const byDay = new Map(dated.map(({ day, value }) => [day, value]));
  return (day: number): LogbookValue | undefined =>
    how === "same day" ? byDay.get(day) : dated.filter((each) => each.day <= day).at(-1)?.value;
}

function withOne(book: Book, lender: Book, role: RoleId, how: "same day" | "last one"): Book {
  const { mapping, cells } = book;
  const date = columnOf(mapping, "date");
  const dated = datedIn(lender, role);
  if (!date || dated.length === 0) return book;
  const end = endOf(cells).column;
  const wide = widened(cells, 1);
  const find = lookUp(dated, how);
  const { order } = dateHabit(mapping, cells);
  let day: number | undefined;
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
    const when = heldCell(cells, row, date.column);
    // a date that stands once a day holds for the rows below it
    day = dateFrom(when.value, when.format, order) ?? day;
    const value = day === undefined ? undefined : find(day);
    if (value !== undefined) wide.put(row, end, value);
  }
  const heading = columnOf(lender.mapping, role)?.heading ?? "";
  const lent = columnOf(lender.mapping, role);
  const { basis, times } = lent ?? {};
  return {
    cells: wide.cells,
    mapping: {
      ...mapping,
      columns: [
        ...mapping.columns,
        {
          column: end,
          heading,
          role,
          unit: lent?.unit,
          ...(basis ? { basis } : {}),
          ...(times === undefined ? {} : { times }),
        },
      ],
    },
  };
}

export function withTablesBeside(book: Book, all: readonly Book[]): Book {
  if (!titrates(book)) return book;
  return lent.reduce((so, [role, how]) => {
    if (isKnown(so.mapping, role)) return so;
    if (role === "strength" && isKnown(so.mapping, "molarity")) return so;
    const lenders = all.filter(
      (each) => each !== book && !titrates(each) && columnOf(each.mapping, role),
    );
    const [lender, ...others] = lenders;
    return lender && others.length === 0 ? withOne(so, lender, role, how) : so;
  }, book);
}
