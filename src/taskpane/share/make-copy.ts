/** A copy of the workbook that is open: its file from the host, converted here. Nothing is sent anywhere. */
import { type Fault, type FaultCode, type Host, isFault } from "../../sheet/port";
import { type Refusal, refused } from "../../sheet/refusal";
import { shareWorkbook } from "../../partner/sharing";
import { isFileProblem, sayFile } from "../../xlsx";
import type { Kind, Made, ShareAct } from "./share-state";

const wording: Partial<Record<FaultCode, string>> = {
  "being-edited":
    "A cell is being edited: finish it with Enter or leave it with Escape, then try again.",
  "no-answer": "The spreadsheet did not hand out its file in time: wait a moment, then try again.",
  "not-offered":
    "This program does not hand out its file: save it, and use npm run share on the file.",
};

/** A sentence for a file that was not handed out; the workbench says why itself. */
export function faultWords({ code, about }: Fault): string {
  if (code === "failed" && about !== "") return about;
  return (
    wording[code] ?? "The file could not be read, and no copy was made: try again in a moment."
  );
}

const fileNames: Record<Kind, string> = {
  partner: "partner-copy",
  numbers: "numbers-only",
};

const twoDigits = (value: number): string => String(value).padStart(2, "0");

/** As the person at the machine counts days: 2026-05-04. */
export const dayOf = (now: Date): string =>
  [now.getFullYear(), twoDigits(now.getMonth() + 1), twoDigits(now.getDate())].join("-");

/** What can be done here, said once the pane is open. */
export async function whatIsOffered(host: Host): Promise<ShareAct> {
  const found = await host.capabilities();
  if (isFault(found)) return { do: "not-offered", sentence: faultWords(found) };
  const { hasFileBytes, opensFiles, savesFiles } = found;
  if (hasFileBytes && (opensFiles || savesFiles)) return { do: "offered" };
  const words = `Here a copy cannot be handed out by ${found.program}. Save the workbook as an .xlsx file: npm run share makes the same copies from it.`;
  return { do: "not-offered", sentence: words };
}

const notOpened: Partial<Record<FaultCode, string>> = {
  "being-edited": wording["being-edited"] ?? "",
  "no-answer":
    "The program has not said that it opened the copy. If a new workbook appears, that is the copy; else try again.",
  "too-large":
    "The copy is too large for this program to open: save the workbook, and use npm run share on the file.",
};

/** A sentence for a copy that did not open as a new workbook. */
export const notOpenedWords = ({ code }: Fault): string =>
  notOpened[code] ??
  "The copy could not be opened as a new workbook: try again, or save the workbook and use npm run share on the file.";

/** Hands a copy over in the way of the program: nothing is called made before it is there. */
export async function handOver(host: Host, made: Made): Promise<ShareAct> {
  const can = await host.capabilities();
  if (isFault(can)) return { do: "failed", sentence: faultWords(can) };
  const { opensFiles, savesFiles } = can;
  const saved: ShareAct = { do: "made", made, handed: { how: "to-save" } };
  if (!opensFiles) return saved;
  const trouble = await host.openFile(made.bytes);
  if (!trouble) return { do: "made", made, handed: { how: "opened", isSavable: savesFiles } };
  const sentence = notOpenedWords(trouble);
  if (!savesFiles) return { do: "failed", sentence };
  return { do: "made", made, handed: { how: "to-save", sentence } };
}

export async function makeCopy(host: Host, kind: Kind, now: Date): Promise<Made | Refusal> {
  const bytes = await host.fileBytes();
  if (isFault(bytes)) return refused(faultWords(bytes));
  const day = dayOf(now);
  const shared = shareWorkbook(bytes, { kind, fileName: "the workbook that was open", day });
  if (isFileProblem(shared)) return refused(sayFile(shared));
  return { ...shared, fileName: `${fileNames[kind]}-${day}.xlsx` };
}
