import { describe, expect, it } from "vitest";
import { ExcelStandIn } from "./stand-in";
import { memoryBook } from "../open-memory";

interface Range {
  values: unknown;
  formulas: unknown;
  load(names: string): void;
}
interface Context {
  workbook: { getActiveCell(): Range; readOnly: boolean; nothingLikeIt: unknown };
  sync(): Promise<void>;
}

const standIn = (): ExcelStandIn =>
  new ExcelStandIn(
    memoryBook({
      name: "test",
      sheets: [{ name: "S", rows: [[{ value: 5 }]], columnWidths: [], tables: [], frozenRows: 0 }],
    }),
  );

const run = <T>(excel: ExcelStandIn, work: (context: Context) => Promise<T>): Promise<T> =>
  excel.run({}, work as (context: unknown) => Promise<T>);

describe("the stand-in for the spreadsheet program", () => {
  it("refuses to be read before a load and a sync, and remembers that it was tried", async () => {
    const excel = standIn();
    const early = run(excel, (context) => Promise.resolve(context.workbook.getActiveCell().values));
    await expect(early).rejects.toThrow("read before it was loaded and synced: range.values");
    const unsynced = run(excel, (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("values");
      return Promise.resolve(cell.values);
    });
    await expect(unsynced).rejects.toThrow("loaded and synced");
    expect(excel.misuses).toHaveLength(2);
  });

  it("gives what was loaded after a sync, and puts what is set at the next one", async () => {
    const excel = standIn();
    const found = await run(excel, async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("values");
      cell.values = [[6]];
      await context.sync();
      return cell.values;
    });
    expect(found).toEqual([[5]]);
    expect(excel.model.book.sheets[0]?.cells["0,0"]?.value).toBe(6);
    expect(excel.misuses).toEqual([]);
  });

  it("refuses an undo group, and makes each request that changes something one undo record", async () => {
    const excel = standIn();
    const grouped = excel.run({ mergeUndoGroup: true }, () => Promise.resolve());
    await expect(grouped).rejects.toThrow("UndoNotSupported");
    await run(excel, async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.values = [[6]];
      cell.values = [[7]];
      await context.sync();
      cell.load("values");
      await context.sync();
      cell.values = [[8]];
      await context.sync();
    });
    expect(excel.undoRecords).toBe(2);
    excel.undo();
    expect(excel.model.book.sheets[0]?.cells["0,0"]?.value).toBe(7);
  });

  it("refuses a request of more than 5 MB before anything of it is done", async () => {
    const excel = standIn();
    const large = run(excel, async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.values = [[6]];
      cell.values = [["x".repeat(5_000_000)]];
      await context.sync();
    });
    await expect(large).rejects.toThrow("RequestPayloadSizeLimitExceeded");
    expect(excel.undoRecords).toBe(0);
    expect(excel.model.book.sheets[0]?.cells["0,0"]?.value).toBe(5);
  });

  it("hands over no more than 5 MB at a time", async () => {
    const excel = standIn();
    const [sheet] = excel.model.book.sheets;
    if (sheet)
      sheet.cells["0,0"] = { value: "x".repeat(5_000_000), formula: "", format: "General" };
    const large = run(excel, async (context) => {
      context.workbook.getActiveCell().load("values");
      await context.sync();
    });
    await expect(large).rejects.toThrow("ResponsePayloadSizeLimitExceeded");
  });

  it("shows the calls of a file with an @, and those just written busy at first", async () => {
    const formula = "=TITRE.ACIDVALUE(2.3,0.1,10)";
    const rows = [[{ formula }]];
    const excel = new ExcelStandIn(
      memoryBook({
        name: "test",
        sheets: [{ name: "S", rows, columnWidths: [], tables: [], frozenRows: 0 }],
      }),
    );
    const shown = (): Promise<unknown> =>
      run(excel, async (context) => {
        const cell = context.workbook.getActiveCell();
        cell.load("values");
        cell.load("formulas");
        await context.sync();
        return [cell.values, cell.formulas];
      });
    const calculated = [[expect.closeTo(1.29, 2)]];
    expect(await shown()).toEqual([calculated, [[`=@${formula.slice(1)}`]]]);
    await run(excel, async (context) => {
      context.workbook.getActiveCell().formulas = [[formula]];
      await context.sync();
    });
    expect(await shown()).toEqual([[["#BUSY!"]], [[formula]]]);
    await shown();
    expect(await shown()).toEqual([calculated, [[formula]]]);
  });

  it("knows no member and no property that it was not given", async () => {
    const excel = standIn();
    const member = run(excel, (context) => Promise.resolve(context.workbook.nothingLikeIt));
    await expect(member).rejects.toThrow("no such member: workbook.nothingLikeIt");
    const property = run(excel, (context) => {
      context.workbook.getActiveCell().load("value");
      return Promise.resolve();
    });
    await expect(property).rejects.toThrow("nothing to load: range.value");
  });
});
