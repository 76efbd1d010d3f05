/** Rows of texts as aligned columns; figures stand to the right. */
const isFigure = (text: string): boolean => /^[-−]?[\d.]/.test(text);

/** A sentence in one cell does not push the others apart. */
const longest = 72;

const wider = (width: number, text: string): number =>
  text.length > longest ? width : Math.max(width, text.length);

/** Two spaces between columns, none at the end of a line. */
export function columns(rows: readonly (readonly string[])[], indent = "  "): string[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [place, text] of row.entries()) widths[place] = wider(widths[place] ?? 0, text);
  }
  const figures = widths.map((_, place) =>
    rows.every((row) => row[place] === "" || isFigure(row[place] ?? "")),
  );
  return rows.map((row) => {
    const cells = row.map((text, place) => {
      const width = widths[place] ?? 0;
      return figures[place] ? text.padStart(width) : text.padEnd(width);
    });
    return (indent + cells.join("  ")).trimEnd();
  });
}
