/** A sheet on paper. It only draws. */
import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  type Nullable,
  VerticalAlign,
} from "@univerjs/core";
import type { CSSProperties } from "react";
import { ChartView } from "../charts/chart-view";
import type { ShownChart } from "../charts/layer";
import { chartWords } from "../charts/words";
import type { PrintedSheet } from "./printed";
import type { PrintedCell, PrintedPart, PrintedRow } from "./printed-parts";

const across: ReadonlyMap<Nullable<HorizontalAlign>, CSSProperties["textAlign"]> = new Map([
  [HorizontalAlign.LEFT, "left"],
  [HorizontalAlign.CENTER, "center"],
  [HorizontalAlign.RIGHT, "right"],
  [HorizontalAlign.JUSTIFIED, "justify"],
]);

const down: ReadonlyMap<Nullable<VerticalAlign>, CSSProperties["verticalAlign"]> = new Map([
  [VerticalAlign.TOP, "top"],
  [VerticalAlign.MIDDLE, "middle"],
]);

const isOn = (value: Nullable<BooleanNumber>): boolean => value === BooleanNumber.TRUE;

function borders(style: IStyleData): CSSProperties {
  const line = (edge: "t" | "b" | "l" | "r"): string | undefined => {
    const border = style.bd?.[edge];
    return border ? `1px solid ${border.cl.rgb ?? "#000000"}` : undefined;
  };
  return {
    ...(line("t") ? { borderTop: line("t") } : {}),
    ...(line("b") ? { borderBottom: line("b") } : {}),
    ...(line("l") ? { borderLeft: line("l") } : {}),
    ...(line("r") ? { borderRight: line("r") } : {}),
  };
}

function lookOf({ style, isFigure }: PrintedCell): CSSProperties {
  return {
    fontSize: `${String(style?.fs ?? 11)}pt`,
    textAlign: across.get(style?.ht) ?? (isFigure ? "right" : "left"),
    verticalAlign: down.get(style?.vt) ?? "bottom",
    // what would be cut off on the screen is read nowhere else on paper
    whiteSpace: isFigure ? "pre" : "pre-wrap",
    ...(isOn(style?.bl) ? { fontWeight: 700 } : {}),
    ...(isOn(style?.it) ? { fontStyle: "italic" } : {}),
    ...(isOn(style?.ul?.s) ? { textDecoration: "underline" } : {}),
    ...(style?.cl?.rgb ? { color: style.cl.rgb } : {}),
    ...(style?.bg?.rgb ? { background: style.bg.rgb } : {}),
    ...(style ? borders(style) : {}),
  };
}

function Row({ row, isHeading }: { row: PrintedRow; isHeading: boolean }) {
  const Cell = isHeading ? "th" : "td";
  return (
    <tr style={{ height: row.height }}>
      {row.cells.map((cell, index) => (
        <Cell key={index} colSpan={cell.columns} rowSpan={cell.rows} style={lookOf(cell)}>
          {cell.text}
        </Cell>
      ))}
    </tr>
  );
}

function Table({ part, name }: { part: PrintedPart; name: string }) {
  const { widths, before, above, rows, scale = 1 } = part;
  const width = widths.reduce((sum, each) => sum + each, 0);
  const columns = (
    <colgroup>
      {widths.map((each, index) => (
        <col key={index} style={{ width: each }} />
      ))}
    </colgroup>
  );
  const body = (given: readonly PrintedRow[]) => (
    <tbody>
      {given.map((row, index) => (
        <Row key={index} row={row} isHeading={false} />
      ))}
    </tbody>
  );
  return (
    <section style={{ zoom: scale }}>
      {before.length > 0 && (
        <table style={{ width }}>
          {columns}
          {body(before)}
        </table>
      )}
      <table aria-label={name} style={{ width }}>
        {columns}
        {above.length > 0 && (
          <thead>
            {above.map((row, index) => (
              <Row key={index} row={row} isHeading />
            ))}
          </thead>
        )}
        {body(rows)}
      </table>
    </section>
  );
}

export interface PrintViewProps {
  readonly sheet: PrintedSheet;
  readonly charts: readonly ShownChart[];
}

export function PrintView({ sheet, charts }: PrintViewProps) {
  const { name, parts, scale, leftOut } = sheet;
  return (
    <div style={{ zoom: scale }}>
      {parts.map((part, index) => (
        <Table key={index} part={part} name={name} />
      ))}
      {leftOut > 0 && <p>{leftOut} rows more: print a part of them, by a print area.</p>}
      {charts.map(({ chart, picture, rect }, index) =>
        picture ? (
          <figure key={index} role="img" aria-label={chartWords(chart, picture)}>
            <ChartView picture={picture} width={rect.width} height={rect.height} />
          </figure>
        ) : null,
      )}
    </div>
  );
}
