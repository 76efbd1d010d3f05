/** A file opened, and saved with one edit, without a page: how the time grows with its rows. */
import { isFileProblem, openXlsx, patchXlsx, sayFile } from "../../workbook/xlsx";
import { type Figure, told } from "./figure";
import { largeFile } from "./large-file";
import { byTurns, quietOf } from "./measure";

const sizes = [100, 1_000, 10_000, 100_000];

function opened(bytes: Uint8Array) {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  return workbook;
}

function saved(workbook: ReturnType<typeof opened>): void {
  const [sheet] = workbook.sheets;
  if (!sheet) throw new Error("the file has no sheet");
  const content = { kind: "value", value: 2.6 } as const;
  const bytes = patchXlsx(workbook, [
    { do: "set-cell", sheet: sheet.name, row: 1, column: 0, content },
  ]);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
}

export async function openAndSave(): Promise<Figure[]> {
  const files = sizes.map((rows) => {
    const bytes = largeFile(rows);
    return { rows, bytes, workbook: opened(bytes) };
  });
  const timed = await byTurns(
    files.flatMap(({ rows, bytes, workbook }) => [
      { name: `open ${String(rows)}`, run: () => opened(bytes) },
      { name: `save ${String(rows)}`, run: () => saved(workbook) },
    ]),
    2,
  );
  return ["open", "save"].flatMap((verb) =>
    sizes.map((rows) =>
      told(
        `${verb} a file of ${rows.toLocaleString("en-GB")} rows`,
        (quietOf(timed, `${verb} ${String(rows)}`) * 1000) / rows,
        "us a row",
        0,
      ),
    ),
  );
}
