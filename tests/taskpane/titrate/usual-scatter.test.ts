import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { usualWords } from "../../../src/taskpane/titrate/usual/usual-words";
import { viewOf } from "../../../src/taskpane/titrate/view-of";
import type { RecordedTitration } from "../../../src/workbook/planning/read-titrations";
import { but, draftOf, type Slip, today } from "./slip";

const mL = (value: number) => quantity("mL", value);

const row = (titres: readonly number[], more: Partial<RecordedTitration> = {}) => ({
  titres: titres.map(mL),
  blanks: [],
  samples: undefined,
  day: 46000,
  lot: "KB-1",
  molarity: quantity("mol/L", 0.1),
  titreStep: mL(0.05),
  ...more,
});

/** Each adds 0.005 mL^2 about its mean, with two degrees of freedom: a scatter of 0.05 mL. */
const five = [0, 1, 2, 3, 4].map((place) => row([2 + place, 2.05 + place, 2.1 + place]));

const workingWith = (rows: readonly RecordedTitration[], slip: Slip = {}, hasUsual = true) =>
  viewOf(draftOf(but(slip)), ".", today, { rows, hasUsual }).working;

describe("the record in the pane", () => {
  it("pools what was titrated alike: five of three titres make a record", () => {
    const { record, usual } = workingWith(five);
    expect(record).toEqual({
      scatter: { scatter: 0.05, freedom: 10 },
      titrations: 5,
      accidents: 0,
      more: 0,
    });
    expect(usual).toBeUndefined();
    expect(usualWords(record as never)).toBe("Your usual scatter is 0.050 mL, from 5 titrations.");
  });

  it("is used once it is agreed to", () => {
    const asked = workingWith(five, { titres: ["2.40", "2.45"] });
    const used = workingWith(five, { titres: ["2.40", "2.45"], picked: { record: "use" } });
    expect(used.usual).toEqual({ scatter: 0.05, freedom: 10 });
    expect(used.judgement?.set.usual).toEqual({ scatter: 0.05, freedom: 10 });
    expect(used.doubt?.bench.freedom).toBe(11);
    expect(used.doubt?.halfWidth).toBeLessThan((asked.doubt?.halfWidth ?? 0) / 2);
    expect(workingWith(five, { picked: { record: "without" } }).usual).toBeUndefined();
  });

  it("gives a single titre a ±", () => {
    const slip: Slip = { titres: ["2.40"] };
    expect(workingWith(five, slip).doubt).toBeUndefined();
    const { doubt } = workingWith(five, { ...slip, picked: { record: "use" } });
    expect(doubt?.bench.freedom).toBe(10);
  });

  it("says how many more titrations make one", () => {
    const { record } = workingWith(five.slice(2));
    expect(usualWords(record as never)).toBe(
      "After 2 more titrations of three titres your usual scatter is known.",
    );
    expect(usualWords(workingWith([]).record as never)).toMatch(/^After 5 more/);
    expect(usualWords(workingWith(five.slice(1)).record as never)).toMatch(
      /^After 1 more titration of three titres your usual scatter is known\.$/,
    );
  });

  it.each([
    ["read more coarsely", row([2, 2.1, 2.2], { titreStep: mL(0.1) })],
    [
      "with a titrant more than twice as strong",
      row([2, 2.3, 2.3], { molarity: quantity("mol/L", 0.21) }),
    ],
    ["of a day to come", row([2, 2.3, 2.3], { day: 50000 })],
    ["of one titre", row([2])],
  ])("leaves out a titration %s", (_, other) => {
    expect(workingWith([...five, other]).record).toEqual(workingWith(five).record);
  });

  it("does not count the row that this titration became", () => {
    const own = row([2.4, 2.5, 2.45], {
      day: 46295,
      lot: "NQ-41",
      molarity: quantity("mol/L", 0.0998),
    });
    expect(workingWith([...five, own]).record?.titrations).toBe(5);
    expect(workingWith([...five, { ...own, lot: "NQ-42" }]).record?.titrations).toBe(6);
  });

  it("leaves out a titration in which something happened, and says so", () => {
    const { record } = workingWith([...five, row([2.4, 2.45, 3.4])]);
    expect(record?.scatter).toEqual({ scatter: 0.05, freedom: 10 });
    expect(usualWords(record as never)).toBe(
      "Your usual scatter is 0.050 mL, from 5 titrations. 1 titration with readings far apart is left out.",
    );
  });

  it("is never narrower than the graduation: equal readings do not prove that there is no scatter", () => {
    const equal = [1, 2, 3, 4, 5].map((titre) => row([titre, titre, titre]));
    // 0.05 / sqrt 6 = 0.0204124
    expect(workingWith(equal).record?.scatter?.scatter).toBe(0.02041);
  });

  it("counts today alone where today scatters more", () => {
    const used: Slip = { picked: { record: "use" }, titres: ["2.40", "2.55", "2.45"] };
    expect(workingWith(five, used).scattersMore).toBe(false);
    const wide = workingWith(five, { ...used, titres: ["2.30", "2.55", "2.10"] });
    // F = (0.101667 / 2) / 0.0025 = 20.3, beyond 4.10 at 2 and 10; before it was 2.33
    expect(wide.scattersMore).toBe(true);
    expect(wide.doubt?.bench.freedom).toBe(2);
  });

  it("is not used where the table has no column to keep it in", () => {
    const { record, usual } = workingWith(five, { picked: { record: "use" } }, false);
    expect([record, usual]).toEqual([undefined, undefined]);
  });
});
