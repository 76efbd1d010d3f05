/**
 * The spreadsheet program as a host: the port's verbs as its own calls, with no decisions of our own.
 * Untested in Excel: the compiler and a stand-in that refuses unloaded reads check it.
 */
import { answers } from "./excel/answers";
import { doStep } from "./excel/steps";
import {
  type Capabilities,
  type Event,
  fault,
  type Fault,
  type FaultCode,
  type Found,
  type Host,
  type Question,
  type Step,
} from "./port";

const faultOf: Record<string, FaultCode> = {
  AccessDenied: "sheet-protected",
  InvalidOperationInCellEditMode: "being-edited",
  ItemAlreadyExists: "name-taken",
  NotImplemented: "not-offered",
  ApiNotFound: "not-offered",
  UnsupportedOperation: "not-offered",
};

function caught(thrown: unknown): Fault {
  const { code, message } = thrown as { code?: string; message?: string };
  return fault(faultOf[code ?? ""] ?? "failed", message ?? "");
}

async function run<T>(
  work: (context: Excel.RequestContext) => Promise<T>,
  options: Excel.RunOptions = {},
): Promise<T | Fault> {
  try {
    return await Excel.run({ delayForCellEdit: true, ...options }, work);
  } catch (thrown) {
    return caught(thrown);
  }
}

/** Slices of the open file, put together. */
async function wholeFile(): Promise<Uint8Array> {
  const file = await new Promise<Office.File>((resolve, reject) => {
    Office.context.document.getFileAsync(Office.FileType.Compressed, (result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value);
      else reject(new Error(result.error.message));
    });
  });
  const bytes = new Uint8Array(file.size);
  let filled = 0;
  for (let index = 0; index < file.sliceCount; index += 1) {
    const slice = await new Promise<Office.Slice>((resolve, reject) => {
      file.getSliceAsync(index, (result) => {
        if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value);
        else reject(new Error(result.error.message));
      });
    });
    bytes.set(slice.data as Uint8Array, filled);
    filled += slice.size;
  }
  file.closeAsync();
  return bytes;
}

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
        groupsUndo: true,
        hasFileBytes: true,
        hasCharts: true,
      };
    });
  }

  read(questions: readonly Question[]): Promise<readonly Found[] | Fault> {
    return run((context) => answers(context, questions));
  }

  write(_label: string, steps: readonly Step[]): Promise<undefined | Fault> {
    return run(
      async (context) => {
        for (const step of steps) doStep(context, step);
        await context.sync();
        return undefined;
      },
      { mergeUndoGroup: true },
    );
  }

  watch(heard: (event: Event) => void): () => void {
    const added = run(async (context) => {
      const result = context.workbook.onSelectionChanged.add(() => {
        heard({ event: "selection" });
        return Promise.resolve();
      });
      await context.sync();
      return result;
    });
    return () => {
      void added.then((result) => {
        if ("remove" in result) result.remove();
      });
    };
  }

  async fileBytes(): Promise<Uint8Array | Fault> {
    try {
      return await wholeFile();
    } catch (thrown) {
      return caught(thrown);
    }
  }
}

/** The host once the program answers; undefined outside it, or when it does not answer in time. */
export async function excelHost(patience: number): Promise<ExcelHost | undefined> {
  if (typeof Office === "undefined") return undefined;
  const late = new Promise<undefined>((resolve) => {
    setTimeout(resolve, patience, undefined);
  });
  const ready = await Promise.race([Office.onReady(), late]);
  return ready?.host === Office.HostType.Excel ? new ExcelHost() : undefined;
}
