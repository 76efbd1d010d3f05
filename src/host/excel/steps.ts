/** Steps as the spreadsheet program's own calls. Nothing is read here, and nothing decided. */
import type { Decoration, Step } from "../../sheet/port";
import { rangeOf } from "./ranges";
import { setCells } from "./cells";
import { addChart } from "./chart";

/** A width of characters in points, for the usual font. */
const pointsPerCharacter = 5.6;

const decorations: ReadonlySet<Step["do"]> = new Set<Decoration>([
  "set-width",
  "freeze-rows",
  "add-note",
  "offer-words",
  "add-chart",
  "print-area",
  "select",
]);

export const isDecoration = (step: Step): step is Extract<Step, { do: Decoration }> =>
  decorations.has(step.do);

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
