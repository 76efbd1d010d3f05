/** What Open asks: one of the workbooks that this browser kept, or a file. */
import { answerOf } from "./answer-of";
import { type Entry, type Kept } from "../keeping/entry";
import { standingWords } from "../keeping/standing";
import { sizeWords, timeWords } from "../keeping/when-words";
import type { Page } from "../page";

/** The workbooks kept, as the list needs them. */
export interface Shelf {
  all(): Promise<Entry[]>;
  get(id: string): Promise<Kept | undefined>;
  forget(entry: Entry): Promise<void>;
  elsewhere(): Promise<ReadonlySet<string>>;
}

type Answer = { readonly open: string } | "choose" | "stay";

const button = (words: string): HTMLButtonElement => {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  return made;
};

const about = ({ keptAt, size, isInFile }: Entry, isElsewhere: boolean): string =>
  [
    timeWords(keptAt),
    sizeWords(size),
    standingWords(isInFile ? "in file" : "kept"),
    ...(isElsewhere ? ["open in another tab"] : []),
  ].join(", ");

/** What is in no file is forgotten at a second press only. */
function forgetButton(entry: Entry, forget: () => void): HTMLButtonElement {
  let isSure = entry.isInFile;
  const made = button("Forget");
  made.addEventListener("click", () => {
    if (isSure) {
      forget();
      return;
    }
    isSure = true;
    made.textContent = "In no file: forget it?";
    made.setAttribute("aria-label", `${entry.name} is in no file: forget it?`);
  });
  made.setAttribute("aria-label", `Forget ${entry.name}`);
  return made;
}

/** @param entries of which there is at least one */
export async function askWhichKept(
  { kept, keptList }: Pick<Page, "kept" | "keptList">,
  entries: readonly Entry[],
  shelf: Shelf,
): Promise<Answer> {
  const elsewhere = await shelf.elsewhere();
  const lines = entries.map((entry) => {
    const line = document.createElement("li");
    const words = document.createElement("p");
    words.textContent = about(entry, elsewhere.has(entry.id));
    const open = button(entry.name);
    open.value = entry.id;
    open.setAttribute("aria-label", `Open ${entry.name}, ${words.textContent}`);
    const forget = forgetButton(entry, () => {
      void shelf.forget(entry).catch(() => undefined);
      line.remove();
      kept.querySelector<HTMLButtonElement>("[value=choose]")?.focus();
    });
    line.append(open, words, forget);
    return line;
  });
  keptList.replaceChildren(...lines);
  const answer = await answerOf(kept);
  return answer === "choose" || answer === "stay" ? answer : { open: answer };
}
