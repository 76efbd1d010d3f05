/** The table as it is understood: the columns named above their headings, some rows below. It scrolls of its own. */
import { pictureOf } from "../table-picture";
import type { FoundTable } from "../found-table";

interface PictureProps {
  readonly table: FoundTable;
  readonly inMark: (text: string) => string;
}

export function TablePicture({ table, inMark }: PictureProps) {
  const columns = pictureOf(table);
  const isAcross = table.guess.isAcross === true;
  const rows = columns[0]?.shown.map((_, at) => at) ?? [];
  const named = (column: (typeof columns)[number]) => (
    <th key={column.place} scope={isAcross ? "row" : "col"} className={`is-${column.family}`}>
      {column.isOpen ? <span className="is-open">To look at: </span> : null}
      {column.is}
    </th>
  );
  return (
    <div
      className="table-picture"
      role="region"
      aria-label="The table, as it is understood"
      tabIndex={0}
    >
      <table>
        {isAcross ? (
          <tbody>
            {columns.map((column) => (
              <tr key={column.place}>
                {named(column)}
                <td className="soft">{column.place}</td>
                <td className="heading">{column.heading}</td>
                {rows.map((at) => (
                  <td key={at}>{inMark(column.shown[at] ?? "")}</td>
                ))}
              </tr>
            ))}
          </tbody>
        ) : (
          <>
            <thead>
              <tr>{columns.map(named)}</tr>
            </thead>
            <tbody>
              <tr>
                {columns.map(({ place, heading }) => (
                  <td key={place} className="heading">
                    <span className="soft">{place} </span>
                    {heading}
                  </td>
                ))}
              </tr>
              {rows.map((at) => (
                <tr key={at}>
                  {columns.map(({ place, shown }) => (
                    <td key={place}>{inMark(shown[at] ?? "")}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </>
        )}
      </table>
    </div>
  );
}
