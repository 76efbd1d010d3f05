/** Layouts that are odd in their headings, or have more than one table. */
import { isTitration, type Layout, one, table, truthOf } from "./plain-table";
import { Page } from "./page";
import { withUnit } from "./columns";
import { dateText } from "./written";

const unitsRow: Layout = (content) => {
  const page = new Page();
  const brackets = content.chance.yes(0.4);
  const truth = content.columns.map((column, at) => {
    page.put(0, at, column.heading);
    page.put(
      1,
      at,
      column.unitWord === "" ? "" : brackets ? `(${column.unitWord})` : column.unitWord,
    );
    return truthOf(column, "Log", 0, at, column.heading);
  });
  content.rows.forEach((row, r) => {
    content.columns.forEach((column, at) => {
      const { value, format } = content.cell(column, row);
      page.put(r + 2, at, value, format);
    });
  });
  return one("Log", page, truth);
};

export const headingLayouts: Readonly<Record<string, Layout>> = {
  "odd units row": unitsRow,
  "odd two tables below": (content) => {
    const first = content.columns.filter(isTitration);
    const lot = first.find(({ meaning }) => meaning === "lot");
    const second = [...(lot ? [lot] : []), ...content.columns.filter((each) => !isTitration(each))];
    if (first.length < 4 || second.length < 4) return unitsRow(content);
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
    if (first.length < 4 || second.length < 4) return unitsRow(content);
    const page = new Page();
    const a = table(content, page, "Log", 1, 0, first);
    const b = table(
      content,
      page,
      "Log",
      1,
      first.length + 1,
      second,
      content.rows.slice(0, Math.max(3, content.rows.length - 4)),
    );
    return one("Log", page, [...a.truth, ...b.truth]);
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
        column.meaning === "titre"
          ? withUnit(String(column.which + 1), column.unitWord, content.style)
          : content.heading(column);
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
    if (!blank || !date) return unitsRow(content);
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
};
