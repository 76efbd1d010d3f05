import { describe, expect, it } from "vitest";
import { ExcelStandIn } from "./stand-in";
import { memoryBook } from "../open-memory";

interface Range {
  values: unknown;
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
