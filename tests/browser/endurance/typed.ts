/** What was typed into the grid and what undo would take back, as a person would remember it. */
import { isFileProblem, openXlsx, sayFile } from "../../../src/xlsx";
import { type Found, foundIn, type Row, rowFault, sheetFault } from "./found";

/** One undo step: a cell of the grid, a row that the pane recorded, or a sheet that it wrote. */
export type Edit =
  | {
      readonly kind: "cell";
      readonly place: string;
      readonly before: string | undefined;
      readonly after: string;
    }
  | { readonly kind: "row"; readonly row: Row }
  | { readonly kind: "sheet"; readonly name: string; readonly doses: readonly number[] };

/** What adds something to a file; there it is, or it was undone. */
type Added = Exclude<Edit, { kind: "cell" }>;

const opened = (bytes: Uint8Array): Found => {
  const file = openXlsx(bytes);
  if (isFileProblem(file)) throw new Error(sayFile(file));
  return foundIn(file);
};

const plain = (text: string): string => text.replace(/^=/, "");

export class Typed {
  /** By "sheet!address": "" for a cell that was emptied, undefined for one that is as its file has it. */
  readonly cells = new Map<string, string | undefined>();
  private readonly added = new Map<Added, boolean>();
  private readonly everTyped = new Set<string>();
  /** Of the file as it was opened. */
  private original: Found = {
    cells: new Map(),
    follows: new Set(),
    sheets: new Map(),
    isWorkedOut: true,
  };
  done: Edit[] = [];
  undone: Edit[] = [];
  private saved = "";
  private savedAdditions = "";

  private get additions(): string {
    return JSON.stringify([...this.added].filter(([, isThere]) => isThere).map(([what]) => what));
  }

  private get state(): string {
    const filled = [...this.cells].filter(([, text]) => text !== undefined).sort();
    return filled.length === 0 && this.additions === "[]"
      ? ""
      : JSON.stringify([filled, this.additions]);
  }

  /** Something would be lost with the page. */
  get isUnsaved(): boolean {
    return this.state !== this.saved;
  }

  /** Its table of titrations goes through a sheet that only sharing writes: no row can be added. */
  get isPartnerCopy(): boolean {
    return this.original.sheets.has("Workings") && this.original.sheets.has("Titrations");
  }

  /** Is there anything in the cell, as far as is known? */
  isFilled(place: string): boolean {
    const text = this.cells.get(place) ?? this.original.cells.get(place) ?? "";
    return text !== "" && !this.original.follows.has(place);
  }

  /** What adds a row to a table of the file cannot be undone any more, nor what came before it. */
  save(): void {
    if (this.additions !== (this.savedAdditions || "[]")) [this.done, this.undone] = [[], []];
    [this.saved, this.savedAdditions] = [this.state, this.additions];
  }

  /** Another workbook, as its file has it. */
  open(bytes: Uint8Array): void {
    this.original = opened(bytes);
    this.cells.clear();
    this.added.clear();
    [this.done, this.undone] = [[], []];
    this.saved = this.savedAdditions = "";
  }

  /** The same workbook opened again from its file: nothing to undo. */
  reopen(): void {
    [this.done, this.undone] = [[], []];
    this.save();
  }

  /** The page was loaded again: nothing to undo, and the rest as it was. */
  loadAgain(): void {
    [this.done, this.undone] = [[], []];
  }

  private put(edit: Edit, isBack: boolean): void {
    if (edit.kind === "cell") this.cells.set(edit.place, isBack ? edit.before : edit.after);
    else this.added.set(edit, !isBack);
  }

  edit(edit: Edit): void {
    if (edit.kind === "cell" && edit.after !== "") this.everTyped.add(plain(edit.after));
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

  /** A saved file holds all of it, nothing that was taken back, and the rest as it was. */
  check(bytes: Uint8Array): void {
    const found = opened(bytes);
    const { cells, follows } = this.original;
    for (const [place, text] of this.cells) {
      const held = plain(found.cells.get(place) ?? "");
      const before = plain(cells.get(place) ?? "");
      // what an answer over several cells left there, or shows there again, is not typed
      const isAnswer = (text ?? "") === "" && !this.everTyped.has(held) && held !== before;
      const wanted = text === undefined ? before : plain(text);
      if (held === wanted || isAnswer || ((text ?? "") === "" && follows.has(place))) continue;
      throw new Error(`the file holds "${held}" in ${place}, which should hold "${wanted}"`);
    }
    for (const [place, text] of cells) {
      if (this.cells.has(place) || follows.has(place) || found.cells.get(place) === text) continue;
      throw new Error(
        `the file holds "${found.cells.get(place) ?? ""}" in ${place}, untouched it was "${text}"`,
      );
    }
    this.checkAdded(found);
  }

  private checkAdded(found: Found): void {
    for (const [what, isThere] of this.added) {
      if (what.kind === "row") {
        const fault = rowFault(found, what.row, isThere);
        if (fault !== undefined) throw new Error(fault);
        continue;
      }
      const isOthers = [...this.added].some(
        ([other, isNow]) => isNow && other.kind === "sheet" && other.name === what.name,
      );
      if (!isThere && !isOthers && found.sheets.has(what.name)) {
        throw new Error(`the sheet ${what.name} was taken back, and is in the file`);
      }
      const fault = isThere ? sheetFault(found, what.name, what.doses) : undefined;
      if (fault !== undefined) throw new Error(fault);
    }
  }

  /** A copy for somebody else holds every sheet and every value that was typed. */
  checkCopy(bytes: Uint8Array): void {
    const copy = opened(bytes);
    for (const name of this.original.sheets.keys()) {
      if (!copy.sheets.has(name)) throw new Error(`the sheet ${name} is not in the copy`);
    }
    for (const [place, text] of this.cells) {
      if (text === undefined || text === "" || text.startsWith("=")) continue;
      const held = copy.cells.get(place);
      if (held !== text)
        throw new Error(`the copy holds "${held ?? ""}" in ${place}, not "${text}"`);
    }
    this.checkAdded(copy);
  }
}
