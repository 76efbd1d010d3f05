/** A titration recorded as the pane records it, taken back by one undo, followed, and kept out by protection. */
import { exact } from "../../core/exact/exact";
import { isFault } from "../../sheet/port";
import { planTitration, recordTitration } from "../planning/record/record-titration";
import type { TitrationRecord } from "../record/titration-record";
import { amber, green, red, type Seen } from "./lines";
import {
  answered,
  cellsAt,
  put,
  shown,
  Stopped,
  stoppedBy,
  type Tools,
  value,
  write,
} from "./tools";

/** Of no lot there is: the figures of step 3.3. */
const titration: TitrationRecord = {
  date: 46146,
  lot: "T-1",
  stage: "as received",
  oil: "used cooking oil",
  operator: "",
  titrantBase: "KOH",
  molarity: exact("0.1"),
  strengthSetBy: "",
  indicator: "",
  secondsHeld: undefined,
  titres: [exact("2.4"), exact("2.5"), exact("2.45")],
  blanks: [exact("0.15")],
  masses: exact("10"),
  titreStep: exact("0.05"),
  massStep: undefined,
  isByVolume: false,
  titrantPercent: undefined,
  burettePercent: undefined,
  usual: undefined,
  omitted: [],
  note: "",
};

const table = "Titrations";
const acidValueColumn = "Acid value mg KOH/g";

/** What stands below a heading in the first row of the table. */
async function cellBelow({ host }: Tools, heading: string) {
  const found = await host.read([{ ask: "table", name: table }]);
  if (isFault(found)) throw stoppedBy(found);
  const [there] = found;
  if (there?.kind !== "table") throw new Stopped(`There is no table ${table}.`);
  const column = there.headings.indexOf(heading);
  if (column < 0) throw new Stopped(`${table} has no column ${heading}.`);
  const { block } = there;
  return cellsAt(block.row + 1, block.column + column, 1, 1, block.sheet);
}

const acidValueShown = async (tools: Tools) =>
  (await answered(tools, await cellBelow(tools, acidValueColumn)))[0]?.[0];

/** By hand: 56.1 × 0.1 × (2.45 − 0.15) ÷ 10. */
const acidValue = 1.2903;

const isNear = (held: unknown, wanted: number): boolean =>
  typeof held === "number" && Math.abs(held - wanted) < 1e-9;

export async function recorded(tools: Tools): Promise<Seen> {
  const plan = await planTitration(tools.host, titration);
  if (plan.kind === "refused") return red("recording", plan.sentence);
  const agreed = { fingerprint: plan.fingerprint, agreed: plan.mustConfirm };
  const outcome = await recordTitration(tools.host, titration, agreed, tools.pause);
  if (outcome.kind !== "recorded") return red("recording", outcome.sentence);
  const held = await acidValueShown(tools);
  if (!isNear(held, acidValue)) {
    return red("recording", `Its acid value is to be 1.2903 mg KOH/g, and shows ${shown(held)}.`);
  }
  const [difference] = outcome.differences;
  if (difference) return red("recording", difference.sentence);
  return outcome.isOneUndo
    ? green("recording", "The row is there, every cell as it was planned.")
    : amber("recording", "The row is there, but it was written in more than one piece.");
}

/** After the person was asked to press Undo once. */
export async function undone({ host }: Tools, isPressed: boolean): Promise<Seen> {
  if (!isPressed) return amber("undo", "Not seen: undo was not pressed.");
  const found = await host.read([{ ask: "table", name: table }, { ask: "sheets" }]);
  if (isFault(found)) throw stoppedBy(found);
  const [there, book] = found;
  const isSheetLeft = book?.kind === "sheets" && book.sheets.some(({ name }) => name === table);
  if (there?.kind === "table") return red("undo", "The table is still there after one undo.");
  return isSheetLeft
    ? red("undo", "The table is gone, but its sheet is still there after one undo.")
    : green("undo", "One undo took table and sheet back.");
}

export async function following(tools: Tools): Promise<Seen> {
  const titre = await cellBelow(tools, "Titre 1 mL");
  await write(tools, put(titre, [[value(2.7)]]));
  const held = await acidValueShown(tools);
  // by hand: 56.1 × 0.1 × ((2.7 + 2.5 + 2.45) ÷ 3 − 0.15) ÷ 10
  return isNear(held, 1.3464)
    ? green("following", "A titre was changed, and its acid value followed.")
    : red(
        "following",
        `A titre was changed: the acid value is to be 1.3464, and shows ${shown(held)}.`,
      );
}

export async function keptOut(tools: Tools): Promise<Seen> {
  const { sheet, ...place } = await cellBelow(tools, "Titre 1 mL");
  const stopped = await tools.program.protect(sheet, true);
  if (stopped) return amber("protected", `The sheet could not be protected: ${stopped.code}.`);
  const done = await tools.host.write("Check this Excel", [put({ sheet, ...place }, [[value(9)]])]);
  const freed = await tools.program.protect(sheet, false);
  if (freed) return red("protected", `The sheet could not be freed again: ${freed.code}.`);
  if (!isFault(done)) return red("protected", "A protected sheet was written to.");
  return done.code === "sheet-protected"
    ? green("protected", "Writing to it is refused, with the reason, and changes nothing.")
    : red("protected", `Writing to it is refused, but as "${done.code}".`);
}
