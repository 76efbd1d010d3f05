/** What was typed into the grid and what undo would take back, as a person would remember it. */
import { isFileProblem, openXlsx, sayFile } from "../../../src/workbook/xlsx";

/** One undo step: a cell of the grid, or a row that the pane recorded. */
export type Edit =
  | {
      readonly kind: "cell";
      readonly place: string;
      readonly before: string;
      readonly after: string;
    }
  | { readonly kind: "row"; readonly lot: string };

export class Typed {
  /** By "sheet!address"; "" for a cell that was emptied or taken back. */
  readonly cells = new Map<string, string>();
  /** Lots that were recorded, and whether their row is there now. */
  readonly lots = new Map<string, boolean>();
  private readonly everTyped = new Set<string>();
  done: Edit[] = [];
  undone: Edit[] = [];
  private saved = "";
  private savedRows = "";

  private get state(): string {
    const filled = [...this.cells].filter(([, text]) => text !== "").sort();
    return JSON.stringify([filled, [...this.lots].filter(([, isThere]) => isThere).sort()]);
  }

  /** Something would be lost with the page. */
  get isUnsaved(): boolean {
    return this.state !== (this.saved || JSON.stringify([[], []]));
  }

  private get rows(): string {
    return [...this.lots]
      .filter(([, isThere]) => isThere)
      .map(([lot]) => lot)
      .join();
  }

  /** What adds a row to a table of the file cannot be undone any more, nor what came before it. */
  save(): void {
    if (this.rows !== this.savedRows) [this.done, this.undone] = [[], []];
    [this.saved, this.savedRows] = [this.state, this.rows];
  }

  /** Another workbook, whose cells are known or not ours. */
  forget(): void {
    this.cells.clear();
    this.lots.clear();
    [this.done, this.undone] = [[], []];
    this.saved = this.savedRows = "";
  }

  /** The same workbook opened again from its file: nothing to undo. */
  reopen(): void {
    [this.done, this.undone] = [[], []];
    this.save();
  }

  private put(edit: Edit, isBack: boolean): void {
    if (edit.kind === "row") this.lots.set(edit.lot, !isBack);
    else this.cells.set(edit.place, isBack ? edit.before : edit.after);
  }

  edit(edit: Edit): void {
    if (edit.kind === "cell" && edit.after !== "") {
      this.everTyped.add(edit.after.replace(/^=/, ""));
    }
    this.put(edit, false);
    this.done.push(edit);
    this.undone = [];
  }

  undo(): void {
    const edit = this.done.pop();
    if (!edit) return;
    this.put(edit, true);
    this.undone.push(edit);
  }

  redo(): void {
    const edit = this.undone.pop();
    if (!edit) return;
    this.put(edit, false);
    this.done.push(edit);
  }

  /** A saved file holds all of it, and nothing that was taken back. */
  check(bytes: Uint8Array): void {
    const file = openXlsx(bytes);
    if (isFileProblem(file)) throw new Error(sayFile(file));
    const found = new Map<string, string>();
    const texts = new Set<unknown>();
    for (const { name, cells } of file.sheets) {
      for (const { row, column, value, formula } of cells) {
        const place = `${name}!${String.fromCharCode(65 + column)}${String(row + 1)}`;
        found.set(place, formula === undefined || formula === "" ? String(value ?? "") : formula);
        texts.add(value);
      }
    }
    for (const [place, text] of this.cells) {
      const held = (found.get(place) ?? "").replace(/^=/, "");
      // emptied or taken back: what was there before may be an answer of the file's own
      if (text === "" && !this.everTyped.has(held)) continue;
      if (held !== text.replace(/^=/, "")) {
        throw new Error(`the file holds "${held}" in ${place}, typed was "${text}"`);
      }
    }
    for (const [lot, isThere] of this.lots) {
      if (texts.has(lot) !== isThere) {
        throw new Error(`the row of ${lot} is ${isThere ? "not " : ""}in the file`);
      }
    }
  }
}
