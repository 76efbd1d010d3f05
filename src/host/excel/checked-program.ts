/** What "Check this Excel" asks of the program beside the port. Untested in Excel, as all of this folder. */
import { type Fault, isFault } from "../../sheet/port";
import type {
  CheckedProgram,
  CountedOnSheet,
  Heard,
  ProgramFacts,
  RequirementSet,
} from "../../sheet/port/checked-program";
import { caught } from "./fault-codes";
import { run } from "./run";
import { isOffered } from "./surroundings";

/** More than any set has had so far. */
const mostMinor = 40;

function newestOf(name: string): RequirementSet {
  for (let minor = mostMinor; minor > 0; minor -= 1) {
    const version = `1.${String(minor)}`;
    if (isOffered(name, version)) return { name, newest: version };
  }
  return { name, newest: undefined };
}

const sets = ["ExcelApi", "CustomFunctionsRuntime", "SharedRuntime", "CompressedFile"];

/** The browser inside, and no more of what it says about itself. An older name stands beside a newer. */
const engineOf = (agent: string): string =>
  ["Edg", "Firefox", "Chrome", "Version"]
    .map((name) => new RegExp(`${name}/[\\d.]+`).exec(agent)?.[0])
    .find((found) => found !== undefined) ?? "not told";

async function decimalMark(): Promise<string | undefined> {
  if (!isOffered("ExcelApi", "1.11")) return undefined;
  const found = await run(async (context) => {
    const { application } = context.workbook;
    application.load("decimalSeparator");
    await context.sync();
    return application.decimalSeparator;
  });
  return isFault(found) ? undefined : found;
}

/** Asked one by one: what a program cannot count must not keep the others from being counted. */
async function counted<T>(
  sheet: string,
  count: (sheet: Excel.Worksheet) => { read: () => T },
): Promise<T | undefined> {
  const found = await run(async (context) => {
    const asked = count(context.workbook.worksheets.getItem(sheet));
    await context.sync();
    return { value: asked.read() };
  });
  return isFault(found) ? undefined : found.value;
}

const chartsOn = (sheet: Excel.Worksheet) => {
  const count = sheet.charts.getCount();
  return { read: () => count.value };
};

const notesOn = (sheet: Excel.Worksheet) => {
  const count = sheet.notes.getCount();
  return { read: () => count.value };
};

const listsOn = (sheet: Excel.Worksheet) => {
  const cells = sheet.getRange().getSpecialCellsOrNullObject("DataValidations");
  cells.load("cellCount");
  return { read: () => (cells.isNullObject ? 0 : cells.cellCount) };
};

export class ExcelProgram implements CheckedProgram {
  constructor(
    readonly refusals: () => readonly string[],
    private readonly agent: string,
  ) {}

  async facts(): Promise<ProgramFacts> {
    const { version, platform } = Office.context.diagnostics;
    return {
      kind: "facts",
      version,
      platform: String(platform),
      engine: engineOf(this.agent),
      decimalMark: await decimalMark(),
      sets: sets.map(newestOf),
    };
  }

  async count(sheet: string): Promise<CountedOnSheet> {
    return {
      kind: "counted",
      charts: await counted(sheet, chartsOn),
      notes: isOffered("ExcelApi", "1.18") ? await counted(sheet, notesOn) : undefined,
      lists: isOffered("ExcelApi", "1.9") ? await counted(sheet, listsOn) : undefined,
    };
  }

  async protect(sheet: string, isProtected: boolean): Promise<undefined | Fault> {
    return run(async (context) => {
      const { protection } = context.workbook.worksheets.getItem(sheet);
      if (isProtected) protection.protect();
      else protection.unprotect();
      await context.sync();
      return undefined;
    });
  }

  removeSheets(names: readonly string[]): Promise<undefined | Fault> {
    return run(async (context) => {
      for (const name of names) context.workbook.worksheets.getItem(name).delete();
      await context.sync();
      return undefined;
    });
  }

  async openEmpty(): Promise<undefined | Fault> {
    try {
      await Excel.createWorkbook();
      return undefined;
    } catch (thrown) {
      return caught(thrown);
    }
  }

  listen(heard: Heard): () => void {
    const page = globalThis as { titrebookHears?: Heard | undefined };
    page.titrebookHears = heard;
    return () => {
      page.titrebookHears = undefined;
    };
  }
}
