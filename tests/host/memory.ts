/**
 * A workbook in memory: for tests of everything that reads or writes one, with undo, protection and
 * faults on demand. Formulas are worked out by the calculation it is given.
 */
import { type Calculation, answer, resultsOf } from "./memory/answers";
import { emptyBook, type MemoryBook } from "./memory/book";
import { type Call, type Interference, noInterference } from "./memory/interference";
import { doStep } from "./memory/steps";
import {
  type Block,
  type Capabilities,
  type Event,
  type Fault,
  fault,
  type Found,
  type Host,
  type Question,
  type Shortfall,
  type Step,
} from "../../src/sheet/port";

interface Change {
  readonly label: string;
  readonly before: MemoryBook;
  readonly after: MemoryBook;
}

export class MemoryHost implements Host {
  interference: Interference = noInterference;
  private selection: Block;
  private readonly done: Change[] = [];
  private undone: Change[] = [];
  private readonly listeners = new Set<(event: Event) => void>();
  private calls = 0;

  constructor(
    private readonly calculation: Calculation,
    private present: MemoryBook = emptyBook(),
  ) {
    this.selection = {
      sheet: present.sheets[0]?.name ?? "",
      row: 0,
      column: 0,
      rows: 1,
      columns: 1,
    };
  }

  /** A copy of the workbook as it is now. */
  get book(): MemoryBook {
    return structuredClone(this.present);
  }

  get undoLabels(): string[] {
    return this.done.map(({ label }) => label);
  }

  /** Changes the workbook behind everybody's back: protects a sheet, filters a table. */
  change(how: (book: MemoryBook) => void): void {
    how(this.present);
    this.tell("change");
  }

  select(block: Block): void {
    this.selection = { ...block, rows: 1, columns: 1 };
    this.tell("selection");
  }

  undo(): void {
    const last = this.done.pop();
    if (!last) return;
    this.undone.push(last);
    this.show(last.before);
  }

  redo(): void {
    const last = this.undone.pop();
    if (!last) return;
    this.done.push(last);
    this.show(last.after);
  }

  capabilities(): Promise<Capabilities | Fault> {
    return this.calling("capabilities", () => ({
      kind: "capabilities",
      program: "the memory workbook",
      canWrite: !this.present.isReadOnly,
      hasFileBytes: false,
      opensFiles: false,
      savesFiles: true,
      hasCharts: true,
    }));
  }

  read(questions: readonly Question[]): Promise<readonly Found[] | Fault> {
    return this.calling("read", () => {
      const around = resultsOf(this.present, this.calculation);
      return questions.map((each) => answer(each, around, this.selection));
    });
  }

  write(label: string, steps: readonly Step[]): Promise<undefined | Shortfall | Fault> {
    return this.calling("write", async (interfered) => {
      if (this.present.isReadOnly) return fault("read-only");
      const before = this.present;
      const after = structuredClone(before);
      for (const [index, step] of steps.entries()) {
        const stopped = (await interfered(index)) ?? doStep(after, step);
        if (stopped) return stopped;
      }
      this.done.push({ label, before, after });
      this.undone = [];
      this.show(after);
      for (const step of steps) if (step.do === "select") this.select(step.block);
      return undefined;
    });
  }

  fileBytes(): Promise<Uint8Array | Fault> {
    return this.calling("fileBytes", () => fault("not-offered", "its file"));
  }

  openFile(): Promise<undefined | Fault> {
    return Promise.resolve(fault("not-offered", "a new workbook"));
  }

  watch(heard: (event: Event) => void): () => void {
    this.listeners.add(heard);
    return () => this.listeners.delete(heard);
  }

  /** One call of a verb, with whatever interferes. */
  private async calling<T>(
    verb: Call["verb"],
    work: (interfered: (moment: Call["moment"]) => Promise<Fault | undefined>) => T | Promise<T>,
  ): Promise<T | Fault> {
    this.calls += 1;
    const count = this.calls;
    const interfered = async (moment: Call["moment"]): Promise<Fault | undefined> =>
      this.interference({ verb, count, moment });
    try {
      const stopped = await interfered("before");
      if (stopped) return stopped;
      const found = await work(interfered);
      return (await interfered("after")) ?? found;
    } catch {
      return fault("failed");
    }
  }

  private show(book: MemoryBook): void {
    this.present = book;
    this.tell("change");
  }

  private tell(event: Event["event"]): void {
    for (const heard of this.listeners) heard({ event });
  }
}
