/**
 * "Check this Excel": runs by itself, in an empty workbook, what tests/scenarios.md asks a person to tick.
 * Each part that stops is a red line, and the next goes on. Every sheet it makes is its own.
 */
import { type Fault, isFault } from "../../sheet/port";
import type { ProgramFacts } from "../../sheet/port/checked-program";
import { isRefused, type Refusal, refused as refusal } from "../../sheet/refusal";
import { plainSheetSteps } from "../planning/sheet-steps";
import { howCellsArrive } from "./arrivals";
import { decimalMark, offers, refused, theFile } from "./around";
import { mendedNames, spilledAnswers, thousandCells } from "./cells-that-change";
import { everyFunction, whatCellsHold } from "./functions";
import { checkLines, green, type LineId, red, type Seen } from "./lines";
import { looks } from "./looks";
import { following, keptOut, recorded, undone } from "./recording";
import { type Report, reportSheet, sheetOfReport, surroundingsOf } from "./report";
import { Stopped, type Tools, workSheet } from "./tools";

export interface Asking {
  /** What is looked at now. */
  tell(what: string): void;
  /** Asks a person to press Undo once; true when they say that they did. */
  undo(): Promise<boolean>;
}

export interface Checked {
  readonly kind: "checked";
  readonly report: Report;
  /** What it made beside its report, and can take out again. */
  readonly sheets: readonly string[];
  /** The report could not be written into the workbook: why. */
  readonly notWritten?: Fault;
}

const nameOf = (id: LineId): string => checkLines.find((line) => line.id === id)?.name ?? "";

/** A part that throws is a line that says so. */
async function part(ids: readonly LineId[], asking: Asking, work: () => Promise<readonly Seen[]>) {
  asking.tell(nameOf(ids[0] ?? "loaded"));
  try {
    return await work();
  } catch (thrown) {
    const words = thrown instanceof Stopped ? thrown.message : `It stopped: ${String(thrown)}`;
    return ids.map((id) => red(id, words));
  }
}

/** Why nothing may be tried here; the names of the sheets where it may. */
async function emptySheets({ host }: Tools): Promise<readonly string[] | Refusal> {
  const found = await host.read([{ ask: "sheets" }]);
  if (isFault(found)) return refusal("The workbook cannot be looked at: try again in a moment.");
  const [book] = found;
  if (book?.kind !== "sheets" || book.sheets.some(({ used }) => used !== undefined)) {
    return refusal(
      "This workbook holds something. The check runs in an empty one, so that it touches nothing of yours.",
    );
  }
  return book.sheets.map(({ name }) => name);
}

async function seenIn(tools: Tools, asking: Asking, facts: ProgramFacts): Promise<Seen[]> {
  const seen: Seen[] = [
    green("loaded", "The pane is here, and its sheet was written."),
    offers(facts),
    decimalMark(facts),
  ];
  const look = async (ids: readonly LineId[], work: () => Promise<Seen | readonly Seen[]>) => {
    seen.push(...(await part(ids, asking, async () => [await work()].flat())));
  };
  const recordAgain = async () => {
    const [again] = await part(["recording"], asking, async () => [await recorded(tools)]);
    const at = seen.findIndex(({ id }) => id === "recording");
    if (again && again.colour !== "green") {
      seen[at] = { ...again, words: `The second time: ${again.words}` };
    }
  };
  await look(["every-function"], () => everyFunction(tools));
  await look(["cells"], () => whatCellsHold(tools));
  await look(["arrivals"], () => howCellsArrive(tools));
  await look(["spills"], () => spilledAnswers(tools));
  await look(["speed"], () => thousandCells(tools));
  await look(["recording"], () => recorded(tools));
  const isRecorded = seen.at(-1)?.colour !== "red";
  await look(["undo"], async () => undone(tools, isRecorded && (await asking.undo())));
  // undone or not: there is a row to go on with
  if (seen.at(-1)?.colour === "green") await recordAgain();
  await look(["following"], () => following(tools));
  await look(["protected"], () => keptOut(tools));
  await look(["notes", "lists", "charts"], () => looks(tools));
  await look(["healing"], () => mendedNames(tools));
  await look(["file"], () => theFile(tools));
  await look(["policy"], () => Promise.resolve(refused(tools.program.refusals())));
  return seen;
}

/** @param day 2026-05-04, as the person at the machine counts days */
export async function checkThisExcel(
  tools: Tools,
  asking: Asking,
  day: string,
): Promise<Checked | Refusal> {
  const before = await emptySheets(tools);
  if (isRefused(before)) return before;
  const facts = await tools.program.facts();
  if (isFault(facts)) return refusal(`The program does not say what it is ("${facts.code}").`);
  const begun = await tools.host.write("Check this Excel", [{ do: "add-sheet", name: workSheet }]);
  if (isFault(begun)) {
    return refusal(`No sheet could be added ("${begun.code}"): nothing can be checked here.`);
  }
  const report: Report = {
    where: surroundingsOf(facts, day),
    seen: await seenIn(tools, asking, facts),
  };
  asking.tell("The report");
  const steps = plainSheetSteps(sheetOfReport(report));
  const written = await tools.host.write("Check this Excel", steps);
  const found = await tools.host.read([{ ask: "sheets" }]);
  const [book] = isFault(found) ? [] : found;
  const now = book?.kind === "sheets" ? book.sheets.map((sheet) => sheet.name) : [];
  const made = now.filter((each) => !before.includes(each) && each !== reportSheet);
  return {
    kind: "checked",
    report,
    sheets: made,
    ...(isFault(written) ? { notWritten: written } : {}),
  };
}
