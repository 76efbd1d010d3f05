/** The ways in which makers lay a logbook out. Those that begin with "odd" are the odd ones. */
import type { Content, Laid, Truth } from "./book";
import type { Column } from "./columns";
import type { Row } from "./figures";
import { Page } from "./page";
import { withUnit } from "./columns";
import { dateText, numberText } from "./written";

type Layout = (content: Content) => Laid;

const truthOf = (column: Column, sheet: string, headingRow: number, at: number, heading: string): Truth => ({
  sheet,
  headingRow,
  column: at,
  isAcross: false,
  heading,
  roles: column.roles,
  unit: column.unit,
});

/** A plain table; says the truth of each of its columns. */
function table(
  content: Content,
  page: Page,
  sheet: string,
  top: number,
  left: number,
  columns: readonly Column[] = content.columns,
  rows: readonly Row[] = content.rows,
  gap: (at: number) => number = () => 0,
): { truth: Truth[]; end: number } {
  const truth = columns.map((column, at) => {
    const heading = content.heading(column);
    page.put(top, left + at, heading);
    return truthOf(column, sheet, top, left + at, heading);
  });
  let row = top;
  rows.forEach((each, at) => {
    row += 1 + gap(at);
    columns.forEach((column, place) => {
      const { value, format } = content.cell(column, each);
      page.put(row, left + place, value, format);
    });
  });
  return { truth, end: row + 1 };
}

const one = (sheet: string, page: Page, truth: readonly Truth[]): Laid => ({
  pages: [[sheet, page]],
  truth,
});

const isTitration = ({ meaning }: Column): boolean =>
  ["number", "date", "lot", "oil", "operator", "titrantBase", "indicator", "molarity", "strength", "sampleMass", "sampleVolume", "titre", "blank", "meanTitre", "correctedTitre", "acidValue", "ffa", "rough", "target"].includes(meaning);

export const layouts: Readonly<Record<string, Layout>> = {
  "at the top": (content) => {
    const page = new Page();
    return one("Log", page, table(content, page, "Log", 0, 0).truth);
  },
  "under a title": (content) => {
    const page = new Page();
    page.put(0, 0, "Saltmarsh Ferries");
    page.put(1, 0, content.chance.of(["Oil book 2026", "Log", "2026"]));
    return one("Log", page, table(content, page, "Log", content.chance.whole(2, 5), content.chance.whole(0, 1)).truth);
  },
  "two sheets": (content) => {
    const first = content.columns.filter(isTitration);
    const lot = first.find(({ meaning }) => meaning === "lot");
    const second = [...(lot ? [lot] : []), ...content.columns.filter((each) => !isTitration(each))];
    if (first.length < 4 || second.length < 4) return (layouts["at the top"] as Layout)(content);
    const a = new Page();
    const b = new Page();
    return {
      pages: [["Tests", a], ["Batches", b]],
      truth: [
        ...table(content, a, "Tests", 0, 0, first).truth,
        ...table(content, b, "Batches", 1, 0, second).truth,
      ],
    };
  },
  "untidy gaps and totals": (content) => {
    const page = new Page();
    const { truth, end } = table(content, page, "Log", 1, 0, content.columns, content.rows, (at) =>
      at > 0 && at % 7 === 0 ? 1 : 0,
    );
    page.put(end + 1, 0, content.chance.of(["Total", "Average", "order more lye"]));
    page.put(end + 1, Math.max(2, content.columns.length - 3), 1234);
    return one("Log", page, truth);
  },
  "untidy remarks above": (content) => {
    const page = new Page();
    page.put(0, 0, "oil log - please fill in every time");
    page.put(1, 3, "ask Mate");
    page.put(1, 6, 12);
    return one("Log", page, table(content, page, "Log", 3, 0).truth);
  },
  "odd titres in one cell": (content) => {
    const page = new Page();
    const mark = content.chance.of(["/", "; ", " / ", " & ", " "]);
    const columns = content.columns.filter(({ meaning, which }) => meaning !== "titre" || which === 0);
    const truth = columns.map((column, at) => {
      const plain = column.meaning === "titre" ? column.heading.replace(/\s*\b1\b|(?<=[A-Z])1/, "") : column.heading;
      const heading = withUnit(plain, column.unitWord, content.style);
      page.put(0, at, heading);
      return truthOf(column, "Log", 0, at, heading);
    });
    content.rows.forEach((row, r) => {
      columns.forEach((column, at) => {
        if (column.meaning === "titre")
          page.put(r + 1, at, row.titres.length === 1 ? (row.titres[0] ?? "") : row.titres.map((each) => numberText(each, content.hand)).join(mark));
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
    const columns = content.columns.filter(({ meaning, which }) => meaning !== "titre" || which === 0);
    const truth = columns.map((column, at) => {
      const plain = column.meaning === "titre" ? column.heading.replace(/\s*\b1\b|(?<=[A-Z])1/, "") : column.heading;
      const heading = withUnit(plain, column.unitWord, content.style);
      page.put(0, at, heading);
      return truthOf(column, "Log", 0, at, heading);
    });
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
    const truth = pages.flatMap(([name, page], at) =>
      table(content, page, name, 1, 0, content.columns, content.rows.slice(at * each, Math.max(at * each + 2, (at + 1) * each))).truth,
    );
    return { pages, truth };
  },
  "odd two tables below": (content) => {
    const first = content.columns.filter(isTitration);
    const lot = first.find(({ meaning }) => meaning === "lot");
    const second = [...(lot ? [lot] : []), ...content.columns.filter((each) => !isTitration(each))];
    if (first.length < 4 || second.length < 4) return (layouts["odd units row"] as Layout)(content);
    const page = new Page();
    page.put(0, 0, "TITRATIONS");
    const a = table(content, page, "Log", 1, 0, first);
    page.put(a.end + 1, 0, "BATCHES");
    const b = table(content, page, "Log", a.end + 2, 0, second);
    return one("Log", page, [...a.truth, ...b.truth]);
  },
  "odd two tables beside": (content) => {
    const first = content.columns.filter(isTitration);
    const lot = first.find(({ meaning }) => meaning === "lot");
    const second = [...(lot ? [lot] : []), ...content.columns.filter((each) => !isTitration(each))];
    if (first.length < 4 || second.length < 4) return (layouts["odd units row"] as Layout)(content);
    const page = new Page();
    const a = table(content, page, "Log", 1, 0, first);
    const b = table(content, page, "Log", 1, first.length + 1, second, content.rows.slice(0, Math.max(3, content.rows.length - 4)));
    return one("Log", page, [...a.truth, ...b.truth]);
  },
  "odd units row": (content) => {
    const page = new Page();
    const brackets = content.chance.yes(0.4);
    const truth = content.columns.map((column, at) => {
      page.put(0, at, column.heading);
      page.put(1, at, column.unitWord === "" ? "" : brackets ? `(${column.unitWord})` : column.unitWord);
      return truthOf(column, "Log", 0, at, column.heading);
    });
    content.rows.forEach((row, r) => {
      content.columns.forEach((column, at) => {
        const { value, format } = content.cell(column, row);
        page.put(r + 2, at, value, format);
      });
    });
    return one("Log", page, truth);
  },
  "odd headings in two rows": (content) => {
    const page = new Page();
    const truth = content.columns.map((column, at) => {
      const words = column.heading.split(" ");
      const whole = content.heading(column);
      if (words.length > 1) {
        page.put(1, at, words[0] ?? "");
        page.put(2, at, withUnit(words.slice(1).join(" "), column.unitWord, content.style));
      } else page.put(2, at, whole);
      return truthOf(column, "Log", 2, at, whole);
    });
    page.put(0, 0, "Saltmarsh Ferries");
    content.rows.forEach((row, r) => {
      content.columns.forEach((column, at) => {
        const { value, format } = content.cell(column, row);
        page.put(r + 3, at, value, format);
      });
    });
    return one("Log", page, truth);
  },
  "odd group headings": (content) => {
    const page = new Page();
    let group = "";
    const words: Readonly<Record<string, string>> = {
      English: "Titration|Batch",
      German: "Titration|Ansatz",
      Spanish: "Titulación|Tanda",
      Portuguese: "Titulação|Batelada",
      French: "Titrage|Cuvée",
      Italian: "Titolazione|Cotta",
      Dutch: "Titratie|Batch",
    };
    const [titration = "", batch = ""] = (words[content.language.name] ?? "").split("|");
    const truth = content.columns.map((column, at) => {
      const own = ["titre", "blank", "meanTitre", "correctedTitre"].includes(column.meaning)
        ? titration
        : ["oilAmount", "catalyst", "methanol", "litresMade"].includes(column.meaning)
          ? batch
          : "";
      if (own !== group && own !== "") page.put(0, at, own);
      group = own;
      const heading =
        column.meaning === "titre" ? withUnit(String(column.which + 1), column.unitWord, content.style) : content.heading(column);
      page.put(1, at, heading);
      return truthOf(column, "Log", 1, at, heading);
    });
    content.rows.forEach((row, r) => {
      content.columns.forEach((column, at) => {
        const { value, format } = content.cell(column, row);
        page.put(r + 2, at, value, format);
      });
    });
    return one("Log", page, truth);
  },
  "odd table of blanks beside": (content) => {
    const blank = content.columns.find(({ meaning }) => meaning === "blank");
    const date = content.columns.find(({ meaning }) => meaning === "date");
    if (!blank || !date) return (layouts["odd units row"] as Layout)(content);
    const page = new Page();
    const rest = content.columns.filter((each) => each !== blank);
    const a = table(content, page, "Log", 0, 0, rest);
    const left = rest.length + 1;
    const b = [date, blank].map((column, at) => {
      const heading = content.heading(column);
      page.put(0, left + at, heading);
      return truthOf(column, "Log", 0, left + at, heading);
    });
    content.rows.forEach((row, r) => {
      const serial = row.get("date");
      page.put(r + 1, left, typeof serial === "number" ? dateText(serial, "slashes") : "");
      page.put(r + 1, left + 1, row.get("blank") ?? "");
    });
    return one("Log", page, [...a.truth, ...b]);
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
    return one("Log", page, content.columns.map((column, at) => truthOf(column, "Log", 0, at, headings[at] ?? "")));
  },
};
