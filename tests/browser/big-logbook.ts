/** A workbook of 10,000 rows of 20 columns, 4 of them worked out from the third. */
import { columnLetters } from "../../src/sheet/cell-name";
import { bookOf } from "../xlsx/files";

const cell = (row: number, column: number): string => {
  const name = `${columnLetters(column)}${String(row)}`;
  const titre = (at: number) => (((row * 37 + at * 101) % 800) + 100) / 100;
  if (column === 1) return `<c r="${name}" t="inlineStr"><is><t>NQ-${String(row)}</t></is></c>`;
  if (column < 16) return `<c r="${name}"><v>${String(titre(column))}</v></c>`;
  const result = titre(2) * 10;
  return `<c r="${name}"><f>C${String(row)}*10</f><v>${String(result)}</v></c>`;
};

export const bigLogbook = (): Uint8Array =>
  bookOf(
    Array.from({ length: 10_000 }, (_, index) => {
      const row = index + 1;
      const cells = Array.from({ length: 20 }, (__, column) => cell(row, column));
      return `<row r="${String(row)}">${cells.join("")}</row>`;
    }).join(""),
  );
