/** Asks before edits are lost. Escape and Cancel mean the same. */
import type { Page } from "../page";

export type Wish = "save" | "lose" | "stay";

export function askBeforeLosing({ ask }: Pick<Page, "ask">, name: string): Promise<Wish> {
  const words = ask.querySelector("p");
  if (words)
    words.textContent = `The edits to ${name} are not saved, and this browser could not keep them. Opening another workbook loses them.`;
  ask.returnValue = "stay";
  ask.showModal();
  return new Promise((answered) => {
    const pressed = ({ target }: Event) => {
      if (target instanceof HTMLButtonElement) ask.close(target.value);
    };
    ask.addEventListener("click", pressed);
    ask.addEventListener(
      "close",
      () => {
        ask.removeEventListener("click", pressed);
        answered(ask.returnValue as Wish);
      },
      { once: true },
    );
  });
}
