import { describe, expect, it } from "vitest";
import { keptFrom, offersOf } from "../../../src/taskpane/titrate/titrants/kept-titrants";
import {
  titrantRecordOf,
  wantsOfKeeping,
} from "../../../src/taskpane/titrate/titrants/keep-titrant";
import { aboutTitrant } from "../../../src/taskpane/titrate/nudges/titrant";
import { recordOf } from "../../../src/taskpane/titrate/record";
import { sheetDay } from "../../../src/taskpane/widgets/day";
import {
  type TitrantCheck,
  titrantHistories,
} from "../../../src/workbook/over-time/titrant-history";
import { strengthSeries } from "../../../src/workbook/over-time/strength-series";
import { rowValues } from "../../../src/workbook/tables/row-values";
import { titrants } from "../../../src/workbook/tables/titrants";
import { after, but, draftOf, seen, type Slip, today, viewOfSlip } from "./slip";

const check = (day: string, strength: number, more: Partial<TitrantCheck> = {}): TitrantCheck => ({
  titrant: "K-5",
  base: "KOH",
  howKnown: "KHP",
  strength,
  percent: 0.42,
  day: sheetDay(day),
  ...more,
});

/** By hand: 0.00002 mol/L less a day, so that 0.001 (1 % of the first) is gone after 50 days. */
const drifting = [
  check("2026-09-01", 0.1),
  check("2026-09-11", 0.0998),
  check("2026-09-21", 0.0996),
];

describe("titrants on offer", () => {
  it("are the latest of each bottle, with its age and ±", () => {
    const offers = offersOf(
      titrantHistories([check("2026-09-27", 0.0981), check("2026-08-01", 0.1)]),
      today,
    );
    expect(offers.map(({ name, about }) => `${name}. ${about}`)).toEqual([
      "0.09810 mol/L KOH, bottle K-5. Checked 3 days ago by KHP, ± 0.42 %",
    ]);
  });

  it("have beside it what the line has come to today, where it changes", () => {
    const [, byLine] = offersOf(titrantHistories(drifting), today);
    // By hand: 29 days after the first, 0.1 - 29 x 0.00002.
    expect(byLine?.name).toBe("0.09942 mol/L KOH, bottle K-5");
    expect(byLine?.about).toMatch(/^Today, by the line of its 3 checks/);
    expect(byLine?.taken.strength).toBe("0.09942");
  });

  it("never has a smaller ± by its line than by one check: what all checks share is in no scatter", () => {
    // the three lie on the line, so that its own ± is 0
    const [, byLine] = offersOf(titrantHistories(drifting), today);
    expect(byLine?.taken.percent).toBe("0.42");
  });

  it("leave out what is of a day to come, of a base nobody knows, or of no strength a titrant has", () => {
    const odd = [
      check("2026-10-01", 0.1, { titrant: "A" }),
      check("2026-09-01", 0.1, { titrant: "B", base: "lime" }),
      check("2026-09-01", 5.6, { titrant: "C" }),
    ];
    expect(offersOf(titrantHistories(odd), today)).toEqual([]);
  });

  it("fill strength, how known, ± and day, as the row will have them", () => {
    const [offer] = offersOf(titrantHistories([check("2026-09-27", 0.0981)]), today);
    if (!offer) throw new Error("no offer");
    const draft = after(draftOf(but({})), { do: "take-titrant", taken: offer.taken });
    expect(draft.words).toMatchObject({ bottle: "K-5", checkedOn: "2026-09-27" });
    const record = recordOf(seen(draft));
    expect(record).toMatchObject({ titrantBase: "KOH", strengthSetBy: "KHP" });
    expect(record?.molarity.toNumber()).toBe(0.0981);
    expect(record?.titrantPercent?.toNumber()).toBe(0.42);
  });
});

describe("where the strength of a kept titrant comes from", () => {
  const as = (text: string) => text;
  const offers = offersOf(titrantHistories(drifting), today);
  const from = (at: number, kept?: string) => {
    const taken = offers[at]?.taken;
    if (!taken) throw new Error("no offer");
    const draft = after(draftOf(but({})), { do: "take-titrant", taken });
    return keptFrom(
      offers,
      kept === undefined ? draft : after(draft, { do: "type", field: "kept", text: kept }),
      as,
    );
  };

  it("is the table, the line of its checks, or the hand that typed it", () => {
    expect(from(0)).toBe("As the table Titrants has it.");
    expect(from(1)).toBe("Worked out for today, from the line of its checks.");
    expect(from(0, "0.1")).toMatch(/^Typed/);
    expect(from(0, "")).toBe("");
  });

  it("has in Titrate the ± that Over time says of the same day", () => {
    const [history] = titrantHistories(drifting);
    const words = strengthSeries(history, sheetDay(today)).sentence;
    expect(words).toContain(`± ${offers[1]?.taken.percent ?? ""} %`);
  });
});

describe("a titrant that was taken, and is then known in another way", () => {
  it("keeps its bottle, and neither the day nor the ± of the check before", () => {
    const [offer] = offersOf(titrantHistories([check("2026-09-27", 0.0981)]), today);
    if (!offer) throw new Error("no offer");
    const taken = after(draftOf(but({})), { do: "take-titrant", taken: offer.taken });
    const anew = after(taken, { do: "pick", picked: { way: "phthalate" } });
    expect(anew.words).toMatchObject({ bottle: "K-5", checkedOn: "" });
    expect(anew.typed.strengthPercent).toBe("");
    const other = after(taken, { do: "pick", picked: { base: "NaOH" } });
    expect(other.words.checkedOn).toBe("2026-09-27");
  });
});

describe("how old a titrant is", () => {
  const said = (checks: readonly TitrantCheck[], slip: Slip, bottle: string, on = today) => {
    const draft = after(draftOf(slip), { do: "write", words: { bottle } });
    return aboutTitrant({ ...seen(draft), today: on }, titrantHistories(checks)).find(
      ({ about }) => about === "age",
    );
  };
  const slip: Slip = { picked: { way: "certified" }, checkedOn: "2026-09-21" };

  it("is said by its own line, which says when it leaves 1 % of its first", () => {
    // By hand: 0.00058 of 0.1 in 29 days; day 51 after 1 September is 22 October.
    expect(said(drifting, slip, "K-5")).toMatchObject({
      tone: "know",
      sentence:
        "Going by its checks, it has lost 0.58 % in 29 days; from 22 Oct 2026 on it is more than 1 % weaker than at first.",
    });
  });

  it("is to be minded once the line is outside", () => {
    expect(said(drifting, slip, "K-5", "2026-10-22")).toMatchObject({
      tone: "check",
      sentence:
        "Going by its checks, it has lost 1 % in 51 days, and is more than 1 % weaker than at first, since 22 Oct 2026: check it against KHP.",
    });
  });

  it("is not a matter of days: half a year without a change is no reason to mind", () => {
    const steady = [
      check("2026-01-01", 0.1),
      check("2026-01-11", 0.0999),
      check("2026-01-21", 0.1),
    ];
    expect(said(steady, slip, "K-5")?.sentence).toContain("no change that chance does not explain");
  });

  it("is told in days with fewer than three checks, with how many make a line", () => {
    expect(said(drifting.slice(0, 1), slip, "K-5")?.sentence).toBe(
      "Checked 29 days ago; 2 more checks make a line that says when it is old.",
    );
    expect(said(drifting.slice(0, 2), slip, "K-5")?.sentence).toBe(
      "Checked 19 days ago; one more check makes a line that says when it is old.",
    );
  });

  it("calls nothing checked that was only made, and says nothing of the table of a certificate without a day", () => {
    const made = [check("2026-07-28", 0.1, { titrant: "K-6", howKnown: "weighing" })];
    expect(said(made, slip, "K-6")?.sentence).toBe(
      "Made 64 days ago, by weighing, and not checked since: KHP does that.",
    );
    expect(said(made, { picked: { way: "certified" }, checkedOn: "" }, "K-6")).toBeUndefined();
    expect(said(drifting, { picked: { way: "certified" }, checkedOn: "" }, "K-5")).toBeUndefined();
  });

  it("is of this bottle alone, not of another", () => {
    expect(said(drifting, slip, "K-6")?.sentence).toContain("Checked 9 days ago; kept in Titrants");
  });
});

describe("keeping a titrant", () => {
  const phthalate: Slip = {
    typed: { phthalateMass: "0.5105", phthalateTitre: "25.05", strengthPercent: "0.5" },
    picked: { way: "phthalate" },
    checkedOn: "2026-09-30",
  };
  const rowOf = (slip: Slip, bottle = "K-6") => {
    const draft = after(draftOf(slip), { do: "write", words: { bottle } });
    const record = titrantRecordOf(seen(draft));
    return (
      record &&
      Object.fromEntries(rowValues(titrants, record).map(({ heading, value }) => [heading, value]))
    );
  };

  it("is a row of KHP readings, out of which the row works its strength", () => {
    expect(rowOf(phthalate)).toEqual({
      Date: sheetDay("2026-09-30"),
      Titrant: "K-6",
      Base: "KOH",
      "How known": "KHP",
      "Stated ± %": 0.5,
      "KHP 1 g": 0.5105,
      "Titre 1 mL": 25.05,
      "Blank mL": "neutralised",
      Note: "Titre 1 is net: its blank is taken off already.",
    });
  });

  it("is a stated strength where it was weighed, and says when the assay is not known", () => {
    const weighed: Slip = {
      typed: { gramsPerLitre: "5.61053" },
      picked: { way: "gramsPerLitre", assay: "same-lye" },
      checkedOn: "2026-09-30",
    };
    // 5.61053 g of pure KOH in a litre is 0.1 mol/L.
    expect(rowOf(weighed)).toMatchObject({
      "How known": "weighing",
      "Stated mol/L": 0.1,
      Note: "Lye's assay unknown: strength as if it were pure.",
    });
  });

  it("waits for bottle and day, and is not offered for one that came out of Titrants", () => {
    expect(wantsOfKeeping(viewOfSlip({ ...phthalate, checkedOn: "" }))).toHaveLength(2);
    expect(rowOf(phthalate, " ")).toBeUndefined();
    expect(rowOf({ ...phthalate, checkedOn: "2026-10-01" })).toBeUndefined();
    const kept: Slip = { typed: { kept: "0.1" }, picked: { way: "kept" }, checkedOn: today };
    expect(rowOf(kept)).toBeUndefined();
  });
});
