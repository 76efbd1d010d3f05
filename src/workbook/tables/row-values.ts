/** A record as what is typed into its row, by heading. Only what is filled in. */
import { isExact } from "../../core/exact/exact";
import type { BookValue } from "../../sheet/book";
import type { TableShape } from "./column";

export interface RowValue {
  readonly heading: string;
  readonly value: BookValue;
}

export const rowValues = <Of>({ columns }: TableShape<Of>, record: Of): RowValue[] =>
  columns.flatMap(({ heading, of }) => {
    const given = of?.(record);
    return given === null || given === undefined || given === ""
      ? []
      : [{ heading, value: isExact(given) ? given.toNumber() : given }];
  });
