/**
 * Runs beside the page and holds the open file: reading and writing a large one takes seconds, in which
 * the page must go on. It ends with the file, and all it took ends with it.
 */
import { refused } from "../../sheet/refusal";
import { isFileProblem, newXlsx, openXlsx, patchedXlsx, sayFile, type Workbook } from "../../xlsx";
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

function withoutBytes(workbook: Workbook): OpenedFile {
  const { sheets, names, dates, looks, kept, isProtected, isUnsettled } = workbook;
  return { sheets, names, dates, looks, kept, isProtected, isUnsettled };
}

function opened(bytes: Uint8Array): Answer<"open"> {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) return refused(sayFile(workbook));
  open = workbook;
  return { is: withoutBytes(workbook) };
}

function made({ ask, edits }: Extract<Asked, { edits: unknown }>): Answer<"save"> {
  if (!open) return refused("No file is open.");
  const again = patchedXlsx(open, edits);
  if (isFileProblem(again)) return refused(sayFile(again));
  const wrong = notAsAsked(edits, again, open);
  if (wrong !== undefined) {
    return refused(`The new file was read back, and ${wrong} does not hold what it should.`);
  }
  if (ask === "save") saved = again;
  return { is: { bytes: again.file.bytes, arrays: arraysOf(again) } };
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
    case "keep":
      open = saved ?? open;
      return { is: undefined };
  }
}

const here = self as unknown as Surroundings;
here.onmessage = ({ data: { number, holds } }) => {
  here.postMessage({ number, holds: answer(holds) });
};
