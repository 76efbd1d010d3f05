/** What a dialog is answered, heard as it closes: the browser tells of a closed dialog only after the next key. */

/** Shows a dialog. @returns the value of the button that was pressed, "stay" when it was left */
export function answerOf(dialog: HTMLDialogElement): Promise<string> {
  return new Promise((heard) => {
    const gone = new AbortController();
    const close = (answer: string) => {
      gone.abort();
      dialog.close();
      heard(answer);
    };
    const on = (event: string, done: (event: Event) => void) =>
      dialog.addEventListener(event, done, { signal: gone.signal });
    on("click", ({ target }) => {
      if (target instanceof HTMLButtonElement && target.value !== "") close(target.value);
    });
    on("cancel", () => close("stay"));
    // a second Escape closes it without asking
    on("close", () => {
      if (!dialog.open) close("stay");
    });
    dialog.showModal();
  });
}
