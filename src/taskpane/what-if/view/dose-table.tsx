/** The doses as a table, which scrolls in a box of its own where the pane is narrow. */
import type { Preview } from "../preview";
import { useMark } from "./desk";

export interface DoseTableProps {
  readonly preview: Preview;
  /** Of the batch sizes: "US gal". */
  readonly unit: string;
}

export function DoseTable({ preview, unit }: DoseTableProps) {
  const inMark = useMark();
  return (
    <div className="doses-box" role="region" aria-label="Doses" tabIndex={0}>
      <table className="doses">
        <caption>Catalyst, g as weighed</caption>
        <thead>
          <tr>
            <th scope="col">Batch, {unit}</th>
            {preview.heads.map((head, at) => (
              <th key={`${head} ${String(at)}`} scope="col">
                {inMark(head)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {preview.rows.map(({ size, cells }, row) => (
            <tr key={`${size} ${String(row)}`}>
              <th scope="row">{inMark(size)}</th>
              {cells.map(({ text, isRefused }, column) => (
                <td key={preview.heads[column]} className={isRefused ? "is-refused" : ""}>
                  {inMark(text)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
