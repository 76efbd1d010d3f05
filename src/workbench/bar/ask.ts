/** Asks before something is lost. Escape and Cancel mean the same. */
import type { Page } from "../page";
import { answerOf } from "./answer-of";

export type Wish = "save" | "lose" | "stay";

function answered(dialog: HTMLDialogElement, sentence: string): Promise<string> {
  const words = dialog.querySelector("p");
  if (words) words.textContent = sentence;
  return answerOf(dialog);
}

export const askBeforeLosing = ({ ask }: Pick<Page, "ask">, name: string) =>
  answered(
    ask,
    `The edits to ${name} are not saved, and this browser could not keep them. Opening another workbook loses them.`,
  ) as Promise<Wish>;

/** True when it may be done. */
export const askWhether = async (
  { askAct }: Pick<Page, "askAct">,
  sentence: string,
): Promise<boolean> => (await answered(askAct, sentence)) === "do";
