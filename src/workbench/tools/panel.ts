/** A small window over the sheet's upper right corner, in which something is filled in; one at a time. */
import type { Bench } from "./bench";
import { made } from "./made";

let open: { close(): void } | undefined;

export interface Panel {
  readonly body: HTMLFormElement;
  close(): void;
}

/** @param closed what else is to be done when it goes */
export function panel(bench: Bench, title: string, closed?: () => void): Panel {
  open?.close();
  const body = made("form");
  const shut = made("button", "Close");
  shut.type = "button";
  const window = made("section", "", made("h2", title), body, shut);
  window.className = "tools-panel";
  window.ariaLabel = title;
  const shown: Panel = {
    body,
    close() {
      if (open !== shown) return;
      open = undefined;
      window.remove();
      closed?.();
      bench.grid.focus();
    },
  };
  shut.addEventListener("click", () => shown.close());
  window.addEventListener("keydown", (event) => {
    // the grid listens further out, and would take what is typed
    event.stopPropagation();
    if (event.key === "Escape") shown.close();
  });
  body.addEventListener("submit", (event) => event.preventDefault());
  bench.page.sheet.append(window);
  open = shown;
  return shown;
}

export function field(value = "", type = "text"): HTMLInputElement {
  const input = made("input");
  input.type = type;
  input.value = value;
  input.autocomplete = "off";
  return input;
}

/** A field with its words above it. */
export function labelled(words: string, control: HTMLElement): HTMLLabelElement {
  return made("label", "", made("span", words), control);
}

export function press(words: string, does: () => void, type: "button" | "submit" = "button") {
  const button = made("button", words);
  button.type = type;
  button.addEventListener("click", does);
  return button;
}
