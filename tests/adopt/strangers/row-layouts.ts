/** Layouts that are odd in their rows. */
import { type Layout, one, table, truthOf } from "./plain-table";
import { Page } from "./page";
import { withUnit } from "./columns";
import { numberText } from "./written";
import type { Truth } from "./laid";

/** One column for all titres, under its heading without a number; headings are put into the page's first row. */
function oneTitreColumn(content: Parameters<Layout>[0], page: Page) {
  const columns = content.columns.filter(
    ({ meaning, which }) => meaning !== "titre" || which === 0,
  );
  const truth = columns.map((column, at) => {
    const plain =
      column.meaning === "titre"
        ? column.heading.replace(/\s*\b1\b|(?<=[A-Z])1/, "")
        : column.heading;
    const heading = withUnit(plain, column.unitWord, content.style);
    page.put(0, at, heading);
    return truthOf(column, "Log", 0, at, heading);
  });
  return { columns, truth };
}

export const rowLayouts: Readonly<Record<string, Layout>> = {
  "odd titres in one cell": (content) => {
    const page = new Page();
    const mark = content.chance.of(["/", "; ", " / ", " & ", " "]);
    const { columns, truth } = oneTitreColumn(content, page);
    content.rows.forEach((row, r) => {
      columns.forEach((column, at) => {
        if (column.meaning === "titre")
          page.put(
            r + 1,
            at,
            row.titres.length === 1
              ? (row.titres[0] ?? "")
              : row.titres.map((each) => numberText(each, content.hand)).join(mark),
          );
        else {
          const { value, format } = content.cell(column, row);
          page.put(r + 1, at, value, format);
        }
      });
    });
    return one("Log", page, truth);
  },
  "odd one row a titration": (content) => {
    const page = new Page();
    const { columns, truth } = oneTitreColumn(content, page);
    let r = 1;
    const repeat = content.chance.of(["empty", "ditto", "again"] as const);
    content.rows.forEach((row) => {
      row.titres.forEach((titre, which) => {
        columns.forEach((column, at) => {
          if (column.meaning === "titre") {
            page.put(r, at, titre);
            return;
          }
          const { value, format } = content.cell(column, row);
          if (which === 0 || repeat === "again") page.put(r, at, value, format);
          else if (repeat === "ditto") page.put(r, at, '"');
        });
        r += 1;
      });
    });
    return one("Log", page, truth);
  },
  "odd lots across": (content) => {
    const page = new Page();
    const left = content.chance.whole(0, 1);
    const top = content.chance.whole(0, 2);
    if (top > 0) page.put(0, 0, "Oil sheet");
    const truth = content.columns.map((column, at): Truth => {
      const heading = content.heading(column);
      page.put(top + at, left, heading);
      content.rows.slice(0, 12).forEach((row, r) => {
        const { value, format } = content.cell(column, row);
        page.put(top + at, left + 1 + r, value, format);
      });
      return { ...truthOf(column, "Log", left, top + at, heading), isAcross: true };
    });
    return one("Log", page, truth);
  },
  "odd month sheets": (content) => {
    const names = ["Jan", "Feb", "March"];
    const each = Math.ceil(content.rows.length / 3);
    const pages = names.map((name) => [name, new Page()] as const);
    const truth = pages.flatMap(
      ([name, page], at) =>
        table(
          content,
          page,
          name,
          1,
          0,
          content.columns,
          content.rows.slice(at * each, Math.max(at * each + 2, (at + 1) * each)),
        ).truth,
    );
    return { pages, truth };
  },
  "odd totals and headings again": (content) => {
    const page = new Page();
    const headings = content.columns.map((column) => content.heading(column));
    const put = (row: number): void => {
      headings.forEach((heading, at) => {
        page.put(row, at, heading);
      });
    };
    put(0);
    let r = 1;
    content.rows.forEach((row, at) => {
      if (at > 0 && at % 8 === 0) {
        page.put(r, 0, content.chance.of(["Average", "Total", "Subtotal"]));
        page.put(r, Math.max(2, headings.length - 2), 321);
        put(r + 1);
        r += 2;
      }
      content.columns.forEach((column, place) => {
        const { value, format } = content.cell(column, row);
        page.put(r, place, value, format);
      });
      r += 1;
    });
    return one(
      "Log",
      page,
      content.columns.map((column, at) => truthOf(column, "Log", 0, at, headings[at] ?? "")),
    );
  },
};
