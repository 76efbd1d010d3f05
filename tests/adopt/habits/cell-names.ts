/** A cell's name from its row and column, both from 0. */
export function cellName(row: number, column: number): string {
  const letters =
    column < 26
      ? String.fromCharCode(65 + column)
      : `${String.fromCharCode(64 + Math.floor(column / 26))}${String.fromCharCode(65 + (column % 26))}`;
  return `${letters}${String(row + 1)}`;
}
