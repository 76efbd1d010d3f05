/** 10,000 rows of 20 columns, four of them formulas, as they are written in a file. */
const letters = "ABCDEFGHIJKLMNOPQRST";
const typed = 16;

export const rows = 10_000;

const written = (row: number, cells: readonly string[]): string =>
  `<row r="${String(row)}">${cells.join("")}</row>`;

/** A row of headings: A, B, C … */
export const title = (row: number): string =>
  written(
    row,
    [...letters].map((letter) => {
      const text = `<is><t>Column ${letter}</t></is>`;
      return `<c r="${letter}${String(row)}" t="inlineStr">${text}</c>`;
    }),
  );

export function line(row: number): string {
  const titre = (column: number) => (((row * 37 + column * 101) % 800) + 100) / 100;
  const cells = [...letters].map((letter, column) => {
    const name = `${letter}${String(row)}`;
    if (column < typed) return `<c r="${name}"><v>${String(titre(column))}</v></c>`;
    return `<c r="${name}"><f>C${String(row)}*10</f><v>${String(titre(2) * 10)}</v></c>`;
  });
  return written(row, cells);
}
