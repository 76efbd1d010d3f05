/** Run by the build: the sample logbook as HTML with every value computed, for the first paint. */
import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { sampleLogbook } from "../../workbook/sample/logbook";
import { openHeadless } from "../engine/node";
import { PlainBook } from "./plain-book";

export async function plainLogbook(): Promise<string> {
  const book = sampleLogbook();
  const workbook = await openHeadless(book);
  try {
    const { plainSheets } = await import("./sheets");
    const sheets = plainSheets(workbook.cells);
    return renderToStaticMarkup(createElement(PlainBook, { sheets }));
  } finally {
    workbook.close();
  }
}
