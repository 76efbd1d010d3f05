/** The parts of workbench.html that code takes hold of. */
function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no part called ${id}.`);
  return found;
}

const button = (id: string): HTMLButtonElement => part(id) as HTMLButtonElement;

export const page = () => ({
  work: part("work"),
  larger: button("larger"),
  sheetAlone: button("sheet-alone"),
  sheet: part("sheet"),
  loading: part("loading"),
  plain: part("plain"),
  grid: part("grid"),
  pane: part("pane"),
  announcer: part("announcer"),
  fileName: part("file-name"),
  begin: button("begin"),
  standing: part("standing"),
  open: button("open"),
  chooser: part("chooser") as HTMLInputElement,
  save: button("save"),
  news: part("news"),
  newsWords: part("news-words"),
  newsClose: button("news-close"),
  ask: part("ask") as HTMLDialogElement,
  askAct: part("ask-act") as HTMLDialogElement,
  kept: part("kept") as HTMLDialogElement,
  keptList: part("kept-list"),
  grey: button("grey"),
  undo: button("undo"),
  redo: button("redo"),
  tools: button("tools"),
  plainToggle: button("plain-toggle"),
});

export type Page = ReturnType<typeof page>;
