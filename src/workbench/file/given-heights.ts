/** Heights of rows that somebody gave them, in pixels. */
import { BooleanNumber, type IObjectArrayPrimitiveType, type IRowData } from "@univerjs/core";

/** A row that somebody gave a height does not go by what stands in it any more. */
export const heightsGiven = (rows: IObjectArrayPrimitiveType<Partial<IRowData>>) =>
  new Map(
    Object.entries(rows).flatMap(([row, { h, ia }]): [number, number][] =>
      h !== undefined && ia === BooleanNumber.FALSE ? [[Number(row), h]] : [],
    ),
  );
