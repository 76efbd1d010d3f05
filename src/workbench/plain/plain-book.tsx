/** Text view of every sheet, readable without the grid and by a screen reader. */
import { columnLetters } from "../../sheet/cell-name";
import type { PlainCell, PlainSheet } from "./sheets";

const classOf = (cell: PlainCell): string | undefined => {
  if (cell.isError) return "wrong";
  const classes = [cell.isCalculated ? "calculated" : "", cell.isNumber ? "number" : ""];
  return classes.filter(Boolean).join(" ") || undefined;
};

/** A line of text alone in its row stands across all columns. */
const isLine = (row: readonly PlainCell[]): boolean =>
  row.slice(1).every((cell) => cell.text === "" && !cell.isHeading);

function Row({ row, number }: { row: readonly PlainCell[]; number: number }) {
  const cells = isLine(row) ? row.slice(0, 1) : row;
  return (
    <tr>
      <th scope="row">{number}</th>
      {cells.map((cell, column) =>
        cell.isHeading ? (
          <th key={column} scope="col">
            {cell.text}
          </th>
        ) : (
          <td
            key={column}
            className={classOf(cell)}
            colSpan={cells.length === row.length ? undefined : row.length}
          >
            {cell.text}
          </td>
        ),
      )}
    </tr>
  );
}

function Sheet({ sheet }: { sheet: PlainSheet }) {
  const columns = Math.max(0, ...sheet.rows.map((row) => row.length));
  const id = `plain-${sheet.name.replace(/\W+/g, "-")}`;
  return (
    <div className="plain-sheet">
      <h2 id={id}>{sheet.name}</h2>
      <div className="plain-scroll" tabIndex={0} role="region" aria-labelledby={id}>
        <table>
          <thead>
            <tr>
              <td />
              {Array.from({ length: columns }, (_, column) => (
                <th key={column} scope="col">
                  {columnLetters(column)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sheet.rows.map((row, index) => (
              <Row key={index} row={row} number={index + 1} />
            ))}
          </tbody>
        </table>
      </div>
      {sheet.leftOut > 0 && (
        <p>{sheet.leftOut} rows below are not in this table: see them in the grid.</p>
      )}
    </div>
  );
}

export const PlainBook = ({ sheets }: { sheets: readonly PlainSheet[] }) => (
  <>
    {sheets.map((sheet) => (
      <Sheet key={sheet.name} sheet={sheet} />
    ))}
  </>
);
