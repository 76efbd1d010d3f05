/**
 * The open workbook and its file: what the grid held when they last agreed, and the worker with the
 * bytes. The sample's file is fetched when it is first asked for.
 */
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import type { Saved } from "./asked";
import { type Edits, editsOf, type FileTerms } from "./edits-of";
import { FileWorker } from "./file-worker";
import { pixelsPerCharacter } from "./file-snapshot";
import type { CellState, GridState } from "./grid-state";
import { arraysOf, type FileArrays, type OpenedFile } from "./opened-file";

/** The sample's file; undefined when it does not come. */
export type Fetched = () => Promise<Uint8Array | undefined>;

type Affected = NonNullable<FileTerms["affected"]>;

/** What a held formula shows need not be what the file says: once it is worked out, it is written. */
const notInFile: CellState["value"] = { type: "Error", basicValue: "not in the file" };

function withoutHeld(state: GridState): GridState {
  const cellOf = (cell: CellState): CellState =>
    cell.formula !== "" && (cell.isHeld || cell.isDoubtful || state.isStopped)
      ? { ...cell, value: notInFile }
      : cell;
  return {
    ...state,
    sheets: state.sheets.map((sheet) => ({
      ...sheet,
      cells: new Map(
        [...sheet.cells].map(([row, cells]) => [
          row,
          new Map([...cells].map(([column, cell]) => [column, cellOf(cell)])),
        ]),
      ),
    })),
  };
}

export interface Writing extends Saved {
  readonly edits: Edits;
}

export class Session {
  private constructor(
    public name: string,
    private worker: FileWorker | undefined,
    private before: GridState,
    private terms: FileTerms,
    private readonly fetched?: Fetched,
  ) {}

  /** @param before what the grid held once the file was laid out and worked out */
  static ofFile(
    name: string,
    worker: FileWorker,
    file: OpenedFile,
    before: GridState,
    affected: Affected,
  ): Session {
    const charactersOf = (pixels: number) => pixels / pixelsPerCharacter;
    const terms = { dates: file.dates, arrays: arraysOf(file), charactersOf, affected };
    return new Session(name, worker, before, terms);
  }

  /** @param before what the grid held once the sample was worked out */
  static ofSample(
    name: string,
    fetched: Fetched,
    before: GridState,
    charactersOf: (pixels: number) => number,
    affected: Affected,
  ): Session {
    const terms = { dates: 1900, arrays: new Map(), charactersOf, affected } as const;
    return new Session(name, undefined, before, terms, fetched);
  }

  /** The worker with the file. */
  private async file(): Promise<FileWorker | Refusal> {
    if (this.worker || !this.fetched) return this.worker ?? refused("No file is open.");
    const bytes = await this.fetched();
    if (!bytes) return refused("The sample's own file could not be fetched: try again.");
    const worker = new FileWorker();
    const made = await worker.ask({ ask: "open", bytes });
    if (isRefused(made)) {
      worker.close();
      return made;
    }
    this.terms = { ...this.terms, arrays: arraysOf(made.is) };
    this.worker = worker;
    return worker;
  }

  /**
   * The file as it would be saved, read back and found right.
   * @param ask "try" where it is not saved, but handed on or kept
   */
  async written(now: GridState, ask: "save" | "try" = "save"): Promise<Writing | Refusal> {
    const worker = await this.file();
    if (isRefused(worker)) return worker;
    const edits = editsOf(this.before, now, this.terms);
    const saved = await worker.ask({ ask, edits: edits.edits });
    return isRefused(saved) ? saved : { ...saved.is, edits };
  }

  /** From now on, what was written last is the file. */
  async keep(now: GridState, arrays: FileArrays): Promise<void> {
    await this.worker?.ask({ ask: "keep" });
    this.before = withoutHeld(now);
    this.terms = { ...this.terms, arrays };
  }

  close(): void {
    this.worker?.close();
  }
}
