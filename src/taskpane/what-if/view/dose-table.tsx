/** The doses as a table, which scrolls in a box of its own where the pane is narrow. */
import { useId } from "react";
import type { Preview } from "../preview";
import { useMark } from "./desk";

export interface DoseTableProps {
  readonly preview: Preview;
  /** Of the batch sizes: "US gal". */
  readonly unit: string;
}

/** A lot's mark does not break at its dash. */
const head = (name: string): string => name.replace(/-/g, "\u2011");

export function DoseTable({ preview, unit }: DoseTableProps) {
  const inMark = useMark();
  const title = useId();
  return (
    <>
      <p className="doses-title" id={title}>
        Lye (catalyst), g as weighed<span className="unseen">. </span>{" "}
        <span className="soft">Across: {preview.across}</span>
      </p>
      <div className="doses-box" role="region" aria-label="Table of doses" tabIndex={0}>
        <table className="doses" aria-labelledby={title}>
          <thead>
            <tr>
              <th scope="col">Batch, {unit}</th>
              {preview.heads.map((name, at) => (
                <th key={`${name} ${String(at)}`} scope="col">
                  {inMark(head(name))}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {preview.rows.map(({ size, cells }, row) => (
              <tr key={`${size} ${String(row)}`}>
                <th scope="row">{inMark(size)}</th>
                {cells.map(({ text, isRefused }, column) => (
                  <td key={String(column)} className={isRefused ? "is-refused" : ""}>
                    {inMark(text)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
