import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { type Draft, newDraft, nextLot } from "../../../src/taskpane/titrate/draft";
import { draftFrom } from "../../../src/taskpane/titrate/stored";
import { times } from "../../thorough";
import { entryOf } from "../../../src/taskpane/titrate/readings";
import { benchWith, type BenchAction, step } from "../../../src/taskpane/titrate/undo";
import { after, draftOf, seen, today, whole } from "./slip";

describe("a titration under way", () => {
  it("adds a reading and empties the fields it was typed in", () => {
    const draft = after(draftOf({ typed: { used: "2.40", mass: "10" } }), {
      do: "add",
      list: "titres",
      reading: { used: "2.40" },
    });
    expect(draft.titres).toEqual([{ used: "2.40" }]);
    expect(draft.typed).toEqual({ mass: "10" });
  });

  it("gives the next one what the person picked last, whatever a probe or a change of a reading picked since", () => {
    const reading = fc.constantFrom("used" as const, "start and end" as const);
    const indicator = fc.constantFrom("turmeric", "pH meter", "alkali blue");
    const acts = fc.oneof(
      fc.record({ by: fc.constant("hand" as const), reading }),
      fc.record({ by: fc.constant("hand" as const), indicator }),
      fc.record({ by: fc.constant("probe" as const), reading, indicator }),
      fc.record({ by: fc.constant("edit" as const), index: fc.nat(2) }),
    );
    const start = after(
      draftOf({}),
      { do: "add", list: "titres", reading: { used: "2.40" } },
      { do: "add", list: "titres", reading: { used: "2.40", start: "0", end: "2.40" } },
    );
    fc.assert(
      fc.property(fc.array(acts, { maxLength: 8 }), fc.boolean(), (made, isReloaded) => {
        let wanted: object = { reading: "used", indicator: "phenolphthalein" };
        const end = made.reduce<Draft>((draft, { by, ...act }) => {
          if ("index" in act) return after(draft, { do: "edit", list: "titres", ...act });
          if (by === "hand") wanted = { ...wanted, ...act };
          const next = after(draft, { do: by === "hand" ? "pick" : "pick-once", picked: act });
          return isReloaded ? (draftFrom(JSON.parse(JSON.stringify(next))) ?? next) : next;
        }, start);
        for (const next of [newDraft("b", today, end), nextLot("c", today, end)])
          expect(next.picked).toMatchObject(wanted);
      }),
      { numRuns: times(50) },
    );
  });

  it("starts the next reading where the last one ended", () => {
    const reading = { used: "2.40", start: "0.00", end: "2.40" };
    const draft = after(draftOf({}), { do: "add", list: "titres", reading });
    expect(draft.typed.start).toBe("2.40");
  });

  it("takes six titres and three blanks, as the row has columns, and no more", () => {
    const add = (list: "titres" | "blanks") =>
      ({ do: "add", list, reading: { used: "1" } }) as const;
    const draft = after(
      draftOf({}),
      ...Array.from({ length: 9 }, () => add("titres")),
      ...Array.from({ length: 9 }, () => add("blanks")),
    );
    expect([draft.titres.length, draft.blanks.length]).toEqual([6, 3]);
  });

  it("omits a titre with its reason and keeps it in its place, until it is put back", () => {
    const omitted = after(draftOf(whole), { do: "omit", index: 1, reason: "bubble" });
    expect(omitted.titres[1]).toEqual({ used: "2.50", omitted: "bubble" });
    expect(after(omitted, { do: "put-back", index: 1 }).titres).toEqual(draftOf(whole).titres);
  });

  it("changes a reading through the fields, and an omitted one stays omitted", () => {
    const editing = after(
      draftOf(whole),
      { do: "omit", index: 0, reason: "spilt" },
      { do: "edit", list: "titres", index: 0 },
    );
    expect(editing.typed.used).toBe("2.40");
    const changed = after(editing, {
      do: "change",
      list: "titres",
      index: 0,
      reading: { used: "2.45" },
    });
    expect(changed.titres[0]).toEqual({ used: "2.45", omitted: "spilt" });
    expect(changed.typed.used).toBeUndefined();
  });

  it("is not recorded any more once it is changed, though walking through it changes nothing", () => {
    const recorded = after(draftOf(whole), { do: "recorded" });
    expect(after(recorded, { do: "go", step: "oil" }).isRecorded).toBe(true);
    expect(after(recorded, { do: "write", words: { note: "x" } }).isRecorded).toBe(false);
    expect(after(recorded, { do: "omit", index: 0, reason: "x" }).isRecorded).toBe(false);
  });

  it("passes on titrant, steps and habits to the next one, and never a reading or a lot", () => {
    const next = newDraft(
      "two",
      today,
      draftOf({ ...whole, typed: { ...whole.typed, volume: "5" } }),
    );
    expect(next.typed).toEqual({
      certified: "0.0998",
      strengthPercent: "0.5",
      titreStep: "0.05",
      massStep: "0.01",
    });
    expect(next.picked).toMatchObject({ way: "certified", blank: "", stage: "as received" });
    expect([next.titres, next.blanks, next.words.lot]).toEqual([[], [], ""]);
  });
});

describe("undo", () => {
  const bench = (...actions: BenchAction[]) => actions.reduce(step, benchWith(draftOf(whole)));

  it("takes back the last act on the readings and says which", () => {
    const omitted = bench({ do: "omit", index: 1, reason: "bubble" });
    expect(omitted.past.at(-1)).toMatchObject({ what: "Put titre 2 back", list: "titres" });
    expect(step(omitted, { do: "undo" }).draft.titres).toEqual(draftOf(whole).titres);
  });

  it("takes back one act after another, and nothing when there is nothing", () => {
    const acts: BenchAction[] = [
      { do: "add", list: "titres", reading: { used: "2.55" } },
      { do: "omit", index: 3, reason: "bubble" },
      { do: "remove-blank", index: 0 },
    ];
    const back = bench(...acts, { do: "undo" }, { do: "undo" }, { do: "undo" }, { do: "undo" });
    expect(back.draft).toEqual({ ...draftOf(whole), isRecorded: false });
  });

  it("leaves what was typed since alone", () => {
    const typed = bench(
      { do: "omit", index: 1, reason: "bubble" },
      { do: "type", field: "mass", text: "11" },
      { do: "undo" },
    );
    expect(typed.draft.typed.mass).toBe("11");
    expect(typed.past).toEqual([]);
  });
});

describe("the reading that is being typed", () => {
  const entry = (typed: Record<string, string>, reading: "used" | "start and end" = "used") => {
    const { draft, figures } = seen(draftOf({ typed, picked: { reading } }));
    return entryOf(draft, figures, "titres");
  };

  it("is the volume used, as finely as it was typed", () => {
    expect(entry({ used: "2,30" })).toEqual({ kind: "reading", reading: { used: "2.30" } });
  });

  it("is the end less the start, exactly", () => {
    expect(entry({ start: "0.15", end: "2.6" }, "start and end")).toEqual({
      kind: "reading",
      reading: { used: "2.45", start: "0.15", end: "2.6" },
    });
    expect(entry({ start: "0.00", end: "0.30" }, "start and end")).toMatchObject({
      reading: { used: "0.30" },
    });
  });

  it("is refused when the end is not above the start", () => {
    for (const end of ["2.4", "2.40", "1"]) {
      const found = entry({ start: "2.40", end }, "start and end");
      expect(found).toMatchObject({ kind: "wrong", field: "end" });
    }
  });

  it("waits for what is missing, field by field", () => {
    expect(entry({})).toMatchObject({ kind: "waiting", field: "used" });
    expect(entry({ start: "0" }, "start and end")).toMatchObject({ kind: "waiting", field: "end" });
  });

  it("needs the mass of its own sample where each has one", () => {
    const { draft, figures } = seen(draftOf({ typed: { used: "2.4" }, picked: { masses: "own" } }));
    expect(entryOf(draft, figures, "titres")).toMatchObject({ kind: "waiting", field: "ownMass" });
  });

  it("stays a blank where it was typed as one and not added", () => {
    const blank = draftOf({ typed: { blankUsed: "0.15" } });
    const { draft, figures } = seen(after(blank, { do: "go", step: "replicates" }));
    expect(entryOf(draft, figures, "blanks")).toEqual({
      kind: "reading",
      reading: { used: "0.15" },
    });
    expect(entryOf(draft, figures, "titres")).toMatchObject({ kind: "waiting", field: "used" });
    const titrated = after(draft, { do: "add", list: "titres", reading: { used: "2.40" } });
    expect(titrated.typed.blankUsed).toBe("0.15");
  });
});
