/** A file dropped anywhere on the page. */
const carriesFiles = ({ dataTransfer }: DragEvent): boolean =>
  dataTransfer?.types.includes("Files") === true;

export function watchDrops(area: HTMLElement, dropped: (file: File) => void): void {
  const mark = (isOver: boolean) => area.classList.toggle("drop-here", isOver);
  // Before the grid's own listeners.
  const listen = (kind: "dragover" | "dragleave" | "drop", heard: (event: DragEvent) => void) => {
    window.addEventListener(
      kind,
      (event) => {
        if (!carriesFiles(event)) return;
        event.preventDefault();
        heard(event);
      },
      { capture: true },
    );
  };
  listen("dragover", () => mark(true));
  listen("dragleave", ({ relatedTarget }) => {
    if (relatedTarget === null) mark(false);
  });
  listen("drop", (event) => {
    event.stopPropagation();
    mark(false);
    const file = event.dataTransfer?.files[0];
    if (file) dropped(file);
  });
}
