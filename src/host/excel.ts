/**
 * The spreadsheet program as a host: the port's verbs as its own calls, with no decisions of our own.
 * Untested in Excel: the compiler and a stand-in that refuses unloaded reads check it.
 */
import { answers } from "./excel/answers";
import { base64, wholeFile } from "./excel/file";
import { caught } from "./excel/fault-codes";
import { run } from "./excel/run";
import { isOffered } from "./excel/surroundings";
import { allOrNothing } from "./excel/writing";
import { inTime } from "../sheet/port/in-time";
import {
  type Capabilities,
  type Event,
  type Fault,
  fault,
  type Found,
  type Host,
  isFault,
  type Question,
  type Shortfall,
  type Step,
} from "../sheet/port";

export class ExcelHost implements Host {
  capabilities(): Promise<Capabilities | Fault> {
    return run(async (context) => {
      const { workbook } = context;
      workbook.load("readOnly");
      await context.sync();
      return {
        kind: "capabilities",
        program: "the spreadsheet program",
        canWrite: !workbook.readOnly,
        hasFileBytes: isOffered("CompressedFile"),
        opensFiles: isOffered("ExcelApi", "1.8"),
        savesFiles: Office.context.platform !== Office.PlatformType.Mac,
        hasCharts: isOffered("ExcelApi", "1.8"),
      };
    });
  }

  read(questions: readonly Question[]): Promise<readonly Found[] | Fault> {
    return run((context) => answers(context, questions));
  }

  /** The program names its undo steps itself: the label is not used. */
  write(_label: string, steps: readonly Step[]): Promise<undefined | Shortfall | Fault> {
    return allOrNothing(steps);
  }

  watch(heard: (event: Event) => void): () => void {
    const hear = (event: Event["event"]) => (): Promise<void> => {
      heard({ event });
      return Promise.resolve();
    };
    const added = run(async (context) => {
      const { workbook } = context;
      const handlers = [
        workbook.onSelectionChanged.add(hear("selection")),
        workbook.worksheets.onChanged.add(hear("change")),
        workbook.worksheets.onCalculated.add(hear("calculation")),
      ];
      await context.sync();
      return { context, handlers };
    });
    return () => {
      void added.then((result) => {
        if (isFault(result)) return;
        for (const handler of result.handlers) handler.remove();
        return result.context.sync();
      });
    };
  }

  async fileBytes(): Promise<Uint8Array | Fault> {
    if (!isOffered("CompressedFile")) return fault("not-offered", "its file");
    try {
      return await wholeFile();
    } catch (thrown) {
      return caught(thrown);
    }
  }

  async openFile(bytes: Uint8Array): Promise<undefined | Fault> {
    try {
      await Excel.createWorkbook(base64(bytes));
      return undefined;
    } catch (thrown) {
      return caught(thrown);
    }
  }
}

/** Milliseconds a call may take: somebody who edits a cell keeps the program from answering. */
const callPatience = 20_000;

/** The host once the program answers; undefined outside it, or when it does not answer in time. */
export async function excelHost(patience: number): Promise<Host | undefined> {
  if (typeof Office === "undefined") return undefined;
  const late = new Promise<undefined>((resolve) => {
    setTimeout(resolve, patience, undefined);
  });
  const ready = await Promise.race([Office.onReady(), late]);
  return ready?.host === Office.HostType.Excel ? inTime(new ExcelHost(), callPatience) : undefined;
}
