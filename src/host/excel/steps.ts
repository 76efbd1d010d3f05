/** Steps as the spreadsheet program's own calls. Nothing is read here, and nothing decided. */
import type { Block, Content, Step, Style } from "../../sheet/port";
import { rangeOf } from "./answers";
import { addChart } from "./chart";

/** The look of each style: ink, ground, bold. */
const looks: Record<Style, { color: string; fill?: string; bold?: boolean; size?: number }> = {
  title: { color: "#12343b", bold: true },
  heading: { color: "#ffffff", fill: "#0b5b65", bold: true },
  input: { color: "#14303a", fill: "#fff8e1" },
  calculated: { color: "#14303a", fill: "#dfeaea" },
  words: { color: "#14303a" },
  caution: { color: "#7a2e0e" },
  large: { color: "#14303a", bold: true, size: 22 },
};

/** A width of characters in points, for the usual font. */
const pointsPerCharacter = 5.6;

/** A text stays a text behind an apostrophe, which the program takes off again. */
const asTyped = (value: string | number | boolean): string | number | boolean =>
  typeof value === "string" && value !== "" ? `'${value}` : value;

function setLook(cell: Excel.Range, style: Style): void {
  const { color, fill, bold, size } = looks[style];
  cell.format.font.color = color;
  cell.format.font.bold = bold ?? false;
  if (fill !== undefined) cell.format.fill.color = fill;
  if (size !== undefined) cell.format.font.size = size;
}

function setCell(cell: Excel.Range, content: Content): void {
  if (content.kind === "keep") return;
  if (content.format !== undefined) cell.numberFormat = [[content.format]];
  if (content.kind === "formula") cell.formulas = [[content.formula]];
  else cell.values = [[asTyped(content.value)]];
  if (content.style !== undefined) setLook(cell, content.style);
}

/**
 * A block of formulas that look alike, as a table of doses is, in a few calls: thousands of cells one
 * by one would keep the program busy for seconds.
 */
function setAlike(range: Excel.Range, contents: readonly (readonly Content[])[]): boolean {
  const [first] = contents.flat();
  if (first?.kind !== "formula") return false;
  const { format, style } = first;
  const formulas: string[][] = [];
  for (const row of contents) {
    const own: string[] = [];
    for (const each of row) {
      if (each.kind !== "formula" || each.format !== format || each.style !== style) return false;
      own.push(each.formula);
    }
    formulas.push(own);
  }
  if (format !== undefined) range.numberFormat = formulas.map((row) => row.map(() => format));
  range.formulas = formulas;
  if (style !== undefined) setLook(range, style);
  return true;
}

function setCells(
  context: Excel.RequestContext,
  block: Block,
  contents: readonly (readonly Content[])[],
) {
  const range = rangeOf(context, block);
  if (setAlike(range, contents)) return;
  for (const [row, cells] of contents.entries()) {
    for (const [column, content] of cells.entries()) setCell(range.getCell(row, column), content);
  }
}

export function doStep(context: Excel.RequestContext, step: Step): void {
  const { workbook } = context;
  switch (step.do) {
    case "add-sheet":
      workbook.worksheets.add(step.name);
      return;
    case "set-cells":
      setCells(context, step.block, step.contents);
      return;
    case "add-table":
      workbook.tables.add(rangeOf(context, step.block), true).name = step.name;
      return;
    case "grow-table":
      workbook.tables.getItem(step.name).resize(rangeOf(context, step.block));
      return;
    case "set-width":
      rangeOf(context, {
        sheet: step.sheet,
        row: 0,
        column: step.column,
        rows: 1,
        columns: 1,
      }).getEntireColumn().format.columnWidth = step.characters * pointsPerCharacter;
      return;
    case "freeze-rows":
      workbook.worksheets.getItem(step.sheet).freezePanes.freezeRows(step.rows);
      return;
    case "add-note":
      // Older programs have no notes: the headings say what they can without.
      if (Office.context.requirements.isSetSupported("ExcelApi", "1.18")) {
        workbook.notes.add(rangeOf(context, step.block), step.text);
      }
      return;
    case "offer-words": {
      const { dataValidation } = rangeOf(context, step.block);
      dataValidation.rule = { list: { inCellDropDown: true, source: step.words.join(",") } };
      dataValidation.errorAlert = {
        showAlert: false,
        style: "Information",
        title: "",
        message: "",
      };
      return;
    }
    case "add-chart":
      addChart(context, step);
      return;
    case "print-area": {
      const { block, secondPage } = step;
      const { pageLayout, horizontalPageBreaks } = workbook.worksheets.getItem(block.sheet);
      pageLayout.setPrintArea(rangeOf(context, block));
      pageLayout.orientation = step.landscape ? "Landscape" : "Portrait";
      // As many pages down as it takes: on a fixed number the program heeds no page break.
      pageLayout.zoom =
        secondPage === undefined
          ? { horizontalFitToPages: 1, verticalFitToPages: 1 }
          : { horizontalFitToPages: 1 };
      if (secondPage !== undefined) {
        horizontalPageBreaks.add(rangeOf(context, { ...block, row: secondPage, rows: 1 }));
      }
      return;
    }
    case "select":
      workbook.worksheets.getItem(step.block.sheet).activate();
      rangeOf(context, step.block).select();
      return;
  }
}
