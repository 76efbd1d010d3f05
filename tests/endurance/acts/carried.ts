/**
 * Any planned change, as a person goes through it: looked at, perhaps disturbed, agreed to in part or
 * whole, written. Whatever comes of it, nothing is lost that was not agreed to.
 */
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../../src/workbook/planning/plan";
import { address } from "../../../src/sheet/address";
import { differences, type Held, isCell, told } from "../held";
import type { World } from "../world";
import { type Disturbance, calm, disturb } from "./disturbed";
import { typeSomewhere } from "./in-the-workbook";

export interface Change {
  readonly what: string;
  plan(): Promise<Plan | Refusal>;
  write(confirmed: Confirmed): Promise<RecordOutcome>;
}

export type Recorded = Extract<RecordOutcome, { kind: "recorded" }>;

export interface Carried {
  readonly outcome: RecordOutcome | Refusal;
  readonly disturbance: Disturbance;
  /** All was agreed to, and nobody typed in between. */
  readonly isClear: boolean;
  /** The workbook holds it. */
  readonly isThere: boolean;
}

const addressOf = (place: string): string => {
  const [sheet, at] = [
    place.slice(0, place.lastIndexOf("!")),
    place.slice(place.lastIndexOf("!") + 1),
  ];
  const [row = 0, column = 0] = at.split(",").map(Number);
  return address({ sheet, row, column, rows: 1, columns: 1 });
};

/** Every change is in the plan, and what was there before was seen and agreed to. */
function foreseen(
  plan: Plan,
  agreed: readonly string[],
  [seen, before, after]: readonly [Held, Held, Held],
): void {
  const places = differences(before, after);
  const sheets = places
    .filter((place) => place.startsWith("sheet:") && !(place in before))
    .map((place) => place.slice("sheet:".length));
  const isPlanned = new Set(plan.cells.map((cell) => cell.address));
  for (const place of places.filter(isCell)) {
    if (sheets.some((sheet) => place.startsWith(`${sheet}!`))) continue;
    const where = addressOf(place);
    if (!isPlanned.has(where)) throw new Error(`not planned: ${told([place], before, after)}`);
    if (place in before && (!agreed.includes(where) || before[place] !== seen[place])) {
      throw new Error(`never agreed to: ${told([place], before, after)}`);
    }
  }
  const gone = Object.keys(before).filter((place) => !isCell(place) && !(place in after));
  if (gone.length > 0) throw new Error(`gone: ${gone.join(", ")}`);
}

/** May the workbook have changed, by what was answered? */
function mayBe(outcome: RecordOutcome | Refusal, isChanged: boolean): boolean {
  switch (outcome.kind) {
    case "recorded":
      return isChanged;
    case "to-confirm":
      return !isChanged;
    case "refused":
      return !isChanged || outcome.isHalfDone === true;
    case "not-known":
      return true;
  }
}

export async function carry(world: World, change: Change): Promise<Carried> {
  const { chance, workbook } = world;
  const disturbance = disturb(world);
  const plan = await change.plan();
  if (plan.kind === "refused") {
    calm(world);
    workbook.check(`looking at what would be written (${change.what})`);
    world.count(`${change.what} refused`);
    return { outcome: plan, disturbance, isClear: true, isThere: false };
  }
  let isClear = true;
  const seen = workbook.present;
  const filled = plan.cells.filter((cell) => cell.mustConfirm).map(({ block }) => block);
  if (disturbance === "none" && chance.is(filled.length > 0 ? 0.4 : 0.1)) {
    await typeSomewhere(world, filled.length > 0 ? chance.of(filled) : plan.block);
    isClear = false;
  }
  const { fingerprint, mustConfirm } = plan;
  const agreed = chance.is(0.8) ? mustConfirm : chance.some(mustConfirm);
  if (agreed.length < mustConfirm.length) isClear = false;
  const before = workbook.present;
  const outcome = await change.write({ fingerprint, agreed });
  calm(world);
  const after = workbook.look();
  const isThere = differences(before, after).length > 0;
  if (!mayBe(outcome, isThere)) {
    const places = told(differences(before, after), before, after);
    throw new Error(`${change.what} was ${outcome.kind}, and changed: ${places || "nothing"}`);
  }
  if (isThere) {
    foreseen(plan, agreed, [seen, before, after]);
    workbook.written();
  } else workbook.sameSteps();
  if (disturbance === "none" && isClear && outcome.kind !== "recorded") {
    throw new Error(`${change.what} was ${outcome.kind}: ${outcome.sentence}`);
  }
  if (outcome.kind === "recorded" && outcome.differences.length > 0) {
    throw new Error(`${change.what}: ${outcome.differences[0]?.sentence ?? ""}`);
  }
  world.count(`${change.what} ${outcome.kind}`);
  return { outcome, disturbance, isClear, isThere };
}
