/**
 * Runs beside the page and holds the open file: reading and writing a large one takes seconds, in which
 * the page must go on. It ends with the file, and all it took ends with it.
 */
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import {
  type Edit,
  isFileProblem,
  newXlsx,
  openXlsx,
  patchedXlsx,
  restructured,
  sayFile,
  type Workbook,
} from "../../xlsx";
import { lostIn, readByText } from "../acts/lost";
import { ActHistory } from "./act-history";
import { chartsIn } from "../../xlsx/charts";
import { ownLogbook } from "../../workbook/own/own-logbook";
import type { Answer, Answers, Asked, Letter } from "./asked";
import { arraysOf, type OpenedFile } from "./opened-file";
import { notAsAsked } from "./verify";

interface Surroundings {
  onmessage: (event: { data: Letter<Asked> }) => void;
  postMessage(letter: Letter<Answer<keyof Answers>>): void;
}

let open: Workbook | undefined;
let saved: Workbook | undefined;
let history = new ActHistory();
/** Since the last act somebody changed something, and it was saved; or it is about to be. */
let isEdited = false;
let willBeEdited = false;
/** What came of an act, until it is shown. */
let coming: { readonly open: Workbook; readonly history: ActHistory } | undefined;

function withoutBytes(workbook: Workbook): OpenedFile {
  const { sheets, names, dates, looks, kept, isProtected, isUnsettled } = workbook;
  const charts = chartsIn(workbook);
  return { sheets, names, dates, looks, kept, isProtected, isUnsettled, charts };
}

function opened(bytes: Uint8Array): Answer<"open"> {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) return refused(sayFile(workbook));
  open = workbook;
  return { is: withoutBytes(workbook) };
}

/** Not only what formulas come to. */
const isByHand = (edit: Edit): boolean =>
  edit.do === "set-cell" ? edit.content.kind !== "result" : edit.do !== "work-out-on-opening";

/** The open file with edits made, read back. */
function edited(edits: readonly Edit[]): Workbook | Refusal {
  if (!open) return refused("No file is open.");
  const again = patchedXlsx(open, edits);
  if (isFileProblem(again)) return refused(sayFile(again));
  const wrong = notAsAsked(edits, again, open);
  return wrong === undefined
    ? again
    : refused(`The new file was read back, and ${wrong} does not hold what it should.`);
}

function made({ ask, edits }: Extract<Asked, { ask: "save" | "try" }>): Answer<"save"> {
  const again = edited(edits);
  if (isRefused(again)) return again;
  if (ask === "save") {
    saved = again;
    willBeEdited = edits.some(isByHand);
  }
  return { is: { bytes: again.file.bytes, arrays: arraysOf(again) } };
}

function comes(next: Workbook, after: ActHistory, lost: number): Answer<"act"> {
  coming = { open: next, history: after };
  const { counts } = after;
  const byText = readByText(next);
  return { is: { opened: withoutBytes(next), size: next.file.bytes.length, lost, byText, counts } };
}

function acted({ edits, act }: Extract<Asked, { ask: "act" }>): Answer<"act"> {
  const before = edited(edits);
  if (isRefused(before)) return before;
  const next = restructured(before, act);
  if (isFileProblem(next)) return refused(sayFile(next));
  const after = history.done(before.file.bytes, isEdited || edits.some(isByHand));
  return comes(next, after, lostIn(act, before, next));
}

function gone({ ask, edits }: Extract<Asked, { ask: "back" | "forth" }>): Answer<"back"> {
  const to = history.to(ask);
  if (!to) return refused("There is nothing to go back to.");
  const now = edited(edits);
  if (isRefused(now)) return now;
  const next = openXlsx(to);
  if (isFileProblem(next)) return refused(sayFile(next));
  return comes(next, history[ask](now.file.bytes), 0);
}

function own(): Answer<"new"> {
  const bytes = newXlsx(ownLogbook());
  return isFileProblem(bytes) ? refused(sayFile(bytes)) : { is: bytes };
}

function answer(asked: Asked): Answer<keyof Answers> {
  switch (asked.ask) {
    case "open":
      return opened(asked.bytes);
    case "save":
    case "try":
      return made(asked);
    case "new":
      return own();
    case "act":
      return acted(asked);
    case "back":
    case "forth":
      return gone(asked);
    case "took":
      if (coming) ({ open, history } = coming);
      coming = saved = undefined;
      isEdited = willBeEdited = false;
      return { is: undefined };
    case "keep":
      open = saved ?? open;
      isEdited ||= willBeEdited;
      return { is: undefined };
  }
}

const here = self as unknown as Surroundings;
here.onmessage = ({ data: { number, holds } }) => {
  here.postMessage({ number, holds: answer(holds) });
};
