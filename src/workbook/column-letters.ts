/** The name of a column counted from 0: A, Z, AA, XFD. */
export function columnLetters(column: number): string {
  const before = column >= 26 ? columnLetters(Math.floor(column / 26) - 1) : "";
  return before + String.fromCharCode(65 + (column % 26));
}
