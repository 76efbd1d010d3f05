/**
 * SUBTOTAL, where no row is hidden and no other subtotal stands in what it reads: holding/subtotals.ts
 * sees to that, and holds it otherwise.
 */
import type { Standard } from "./adapter";
import { number } from "./convert";
import { doubt } from "./doubt";
import { statistics } from "./statistics";
import { Fault } from "./value";

const names = [
  ...["AVERAGE", "COUNT", "COUNTA", "MAX", "MIN", "PRODUCT"],
  ...["STDEV", "STDEVP", "SUM", "VAR", "VARP"],
];

export const subtotal: Readonly<Record<string, Standard>> = {
  SUBTOTAL: {
    least: 2,
    most: 255,
    kinds: "vl",
    work: ([which, ...lists]) => {
      const cell = which?.rows[0]?.[0] ?? null;
      const given = Math.trunc(number(cell));
      const name = names[(given > 100 ? given - 100 : given) - 1];
      if (typeof cell !== "number" || name === undefined) doubt();
      const work = statistics[name ?? ""]?.work;
      if (!work) throw new Fault("#VALUE!");
      return work(lists.map((list) => ({ ...list, isRange: true })));
    },
  },
};
