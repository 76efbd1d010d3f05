/** The mass of each titre's sample: its own, or one for all. */
import { headingParts } from "../../recognising/heading";
import { columnsOf, type LogbookMapping, type MappedColumn } from "../../recognising/mapping";

export type ListAt = (columns: readonly MappedColumn[]) => (row: number) => (number | undefined)[];

/** Masses of each titre's own sample where any is filled in, else the one for all. */
export function massReader(
  mapping: LogbookMapping,
  listAt: ListAt,
  titres: readonly MappedColumn[],
) {
  const columns = columnsOf(mapping, "sampleMass");
  const numbers = columns.map(({ heading }) => headingParts(heading).number);
  const forAll = listAt(columns.filter((_, at) => numbers[at] === undefined));
  const numbered = columns.filter((_, at) => numbers[at] !== undefined);
  const own = listAt(numbered);
  return (row: number): (number | undefined)[] => {
    const each = own(row);
    if (each.some((mass) => mass !== undefined)) {
      return titres.map(({ heading }, at) => {
        const number = headingParts(heading).number ?? at + 1;
        return each[numbered.findIndex((column) => headingParts(column.heading).number === number)];
      });
    }
    const one = forAll(row)[0];
    return titres.length > 0 ? titres.map(() => one) : [one];
  };
}
