/** Sheets of one logbook, a month each: what is agreed of one holds for all under the same headings. */
import type { LogbookMapping } from "../../adopt/recognising/mapping";
import type { FoundTable } from "./found-table";

export const headingsOf = ({ guess }: Pick<FoundTable, "guess">): string =>
  JSON.stringify([guess.isAcross === true, guess.columns.map(({ heading }) => heading)]);

/** Each column as in the other table; a figure for all rows stays the own one where the sheet has its own. */
export function asIn(own: FoundTable, agreed: LogbookMapping): LogbookMapping {
  const shift = (own.guess.columns[0]?.column ?? 0) - (agreed.columns[0]?.column ?? 0);
  const onSheet = own.mapping.constants.filter(({ from }) => from.kind === "cell");
  const others = agreed.constants.filter(
    ({ role, from }) => from.kind === "typed" && !onSheet.some((each) => each.role === role),
  );
  const said = onSheet.map((each) => {
    const { unit, basis } = agreed.constants.find(({ role }) => role === each.role) ?? each;
    return { ...each, unit: each.unit ?? unit, ...(basis === undefined ? {} : { basis }) };
  });
  return {
    ...own.mapping,
    columns: agreed.columns.map((each) => ({ ...each, column: each.column + shift })),
    constants: [...said, ...others],
    ...(agreed.answers === undefined ? {} : { answers: agreed.answers }),
    ...(agreed.dates === undefined ? {} : { dates: agreed.dates }),
  };
}

/** The other sheets that agreeing holds for. */
export function alsoFor(tables: readonly FoundTable[], at: number): readonly string[] {
  const shown = tables[at];
  return shown
    ? tables
        .filter(
          (each) =>
            !each.isAgreed &&
            each.guess.sheet !== shown.guess.sheet &&
            headingsOf(each) === headingsOf(shown),
        )
        .map(({ guess }) => guess.sheet)
    : [];
}

/** The tables once the one at a place is agreed to. */
export function agreedWith(tables: readonly FoundTable[], at: number): readonly FoundTable[] {
  const shown = tables[at];
  if (!shown) return tables;
  const headings = headingsOf(shown);
  return tables.map((table, each) => {
    if (each === at) return { ...table, isAgreed: true };
    const isSame = table.guess.sheet !== shown.guess.sheet && headingsOf(table) === headings;
    return isSame && !table.isAgreed
      ? { ...table, mapping: asIn(table, shown.mapping), isAgreed: true }
      : table;
  });
}
