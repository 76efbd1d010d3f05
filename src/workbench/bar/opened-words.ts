/** What one is told of a file just opened: what is not worked out here, and what it keeps unshown. */
import { counted } from "../../sheet/counted";
import { keptWords } from "../../xlsx/kept-words";
import type { OpenedFile } from "../file/opened-file";
import type { Entry } from "../keeping/entry";
import { timeWords } from "../keeping/when-words";
import { sheetKey } from "../sheet-key";
import { greyList, type Holds } from "./held-list";
import type { Part } from "./news";

type Kept = OpenedFile["kept"][number];

/** Charts are drawn over their cells, lists to choose from are offered, the pane shows a cell's note. */
function notShown({ kept, charts = [], sheets }: OpenedFile): Kept[] {
  return kept.flatMap((each) => {
    const drawn = charts.filter(({ sheet, picture }) => picture && sheet === each.sheet).length;
    const sheet = sheets.find(({ name }) => name === each.sheet);
    const { validations = [], notes = [] } = sheet ?? {};
    const shown: Readonly<Record<string, number>> = {
      charts: drawn,
      validations: validations.length,
      notes: notes.length,
    };
    const isShown = shown[each.what] ?? 0;
    const count = each.sheet === undefined ? each.count : each.count - isShown;
    return count > 0 ? [{ ...each, count }] : [];
  });
}

function keptList(file: OpenedFile): string[] {
  const others = file.sheets.filter(({ kind }) => kind === "other").map(({ name }) => name);
  return [
    ...notShown(file).map(keptWords),
    ...others.map((name) => `the sheet ${name}, which has no cells`),
  ];
}

/** Formulas that come to something else each day are no longer what the file has. */
function clockPart(file: OpenedFile, { holding }: Holds): Part[] {
  if (file.isUnsettled) return [];
  const isByClock = holding.byTheClock();
  const count = file.sheets.reduce(
    (sum, { name, cells }) =>
      sum +
      cells.filter(
        ({ formula, row, column }) =>
          formula !== undefined && isByClock(sheetKey(name), row, column),
      ).length,
    0,
  );
  if (count === 0) return [];
  return [
    {
      says: `${counted(count, "formula")} going by the day or the time, worked out for now.`,
      items: [],
    },
  ];
}

/** Of a logbook of one's own that was just begun. */
export const begunWords =
  "Your own logbook is open, empty. Save puts it in a file. Begin with My bench or Titrate in the pane.";

/** Said of a workbook that another tab has open too. */
const elsewhere =
  " It is open in another tab or window too: what you change here is kept as a workbook of its own, and neither writes over the other.";

/** @param isElsewhere another tab has one of this name open */
export function openedWords(
  name: string,
  file: OpenedFile,
  grid: Holds,
  isElsewhere: boolean,
): [string, ...Part[]] {
  const kept = keptList(file);
  const parts = [...greyList(grid), ...clockPart(file, grid)];
  if (kept.length > 0) {
    parts.push({ says: "Not shown here, and kept in the file as it is:", items: kept });
  }
  const all = parts.length === 0 ? " All of it is shown." : "";
  return [`${name} is open.${all}${isElsewhere ? elsewhere : ""}`, ...parts];
}

/** What one is told of a workbook that this browser kept. */
export function reopenedWords({ name, keptAt, isInFile }: Entry, isElsewhere: boolean): string {
  const inFile = isInFile ? "" : " What you changed is in no file yet.";
  return `${name} is open again, as this browser kept it on ${timeWords(keptAt)}.${inFile}${isElsewhere ? elsewhere : ""}`;
}
