/** Layouts that most makers have, tidy and untidy. */
import { isTitration, type Layout, one, table } from "./plain-table";
import { Page } from "./page";

const atTheTop: Layout = (content) => {
  const page = new Page();
  return one("Log", page, table(content, page, "Log", 0, 0).truth);
};

export const tidyLayouts: Readonly<Record<string, Layout>> = {
  "at the top": (content) => {
    const page = new Page();
    return one("Log", page, table(content, page, "Log", 0, 0).truth);
  },
  "under a title": (content) => {
    const page = new Page();
    page.put(0, 0, "Saltmarsh Ferries");
    page.put(1, 0, content.chance.of(["Oil book 2026", "Log", "2026"]));
    return one(
      "Log",
      page,
      table(content, page, "Log", content.chance.whole(2, 5), content.chance.whole(0, 1)).truth,
    );
  },
  "two sheets": (content) => {
    const first = content.columns.filter(isTitration);
    const lot = first.find(({ meaning }) => meaning === "lot");
    const second = [...(lot ? [lot] : []), ...content.columns.filter((each) => !isTitration(each))];
    if (first.length < 4 || second.length < 4) return atTheTop(content);
    const a = new Page();
    const b = new Page();
    return {
      pages: [
        ["Tests", a],
        ["Batches", b],
      ],
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
};
