/**
 * The door out: a workbook's bytes with some edits made. Only the parts that must change do; every
 * other part is in the new file byte for byte, and packed as it was. The new bytes are read back before
 * they leave: a formula that is not the one that was meant refuses them.
 */
import type { Workbook } from "./model";
import { Package } from "./package/package";
import { applySheet } from "./patch/apply-sheet";
import { setCalculation } from "./patch/calculation";
import { forgetFormulas } from "./patch/calculation-chain";
import { checkWritten } from "./patch/check-written";
import { addNames } from "./patch/defined-names";
import { Draft } from "./patch/draft";
import type { Edit } from "./patch/edits";
import { Gatherer } from "./patch/gather";
import { addPane } from "./patch/pane";
import { addPrintNames } from "./patch/print-setup";
import { filterTable } from "./patch/table/filter";
import { growTablePart } from "./patch/table/part";
import { answer, type FileProblem, isFileProblem } from "./problem";
import { dynamicMarks } from "./read/dynamic-arrays";
import { readWorkbook } from "./open";
import { WorkbookStyles } from "./styles/dresser";

function apply(draft: Draft): Uint8Array {
  const { file, workbookPart } = draft;
  const styles = new WorkbookStyles(file, workbookPart);
  const [dynamicMark] = dynamicMarks(file, workbookPart);
  const dropped = new Map<number, ReadonlySet<string>>();
  for (const sheet of draft.all()) {
    const cells = applySheet(file, sheet, styles, dynamicMark);
    if (cells.length > 0) dropped.set(sheet.listed.id, new Set(cells));
    for (const table of sheet.tables) growTablePart(file, table);
    for (const filter of sheet.filters) {
      const part = sheet.tables.find(({ name }) => name === filter.table)?.before?.part;
      if (part !== undefined) filterTable(file, part, filter);
    }
  }
  styles.save();
  addNames(file, workbookPart, draft.names);
  addPrintNames(file, draft.all());
  if (draft.pane) addPane(file, draft.pane);
  if (draft.isWorkedOutOnOpening) setCalculation(file, workbookPart, true);
  forgetFormulas(file, workbookPart, dropped);
  return file.toBytes();
}

/**
 * Makes all of the edits, or none. What is given is only read: the answer is new bytes, or, without
 * edits, the very bytes that were opened.
 * @param given a file's bytes, or the workbook openXlsx made of them
 * @example patchXlsx(workbook, [{ do: "set-cell", sheet: "Log", row: 0, column: 0, content: { kind: "value", value: 2.4 } }])
 */
export function patchXlsx(
  given: Uint8Array | Workbook,
  edits: readonly Edit[],
): Uint8Array | FileProblem {
  const made = patchedXlsx(given, edits);
  return isFileProblem(made) ? made : made.file.bytes;
}

/** The same, and what was read back from the new bytes: its file is to be had as `file.bytes`. */
export function patchedXlsx(
  given: Uint8Array | Workbook,
  edits: readonly Edit[],
): Workbook | FileProblem {
  return answer(() => {
    const opened = given instanceof Uint8Array ? readWorkbook(new Package(given)) : given;
    if (edits.length === 0) return opened;
    const draft = new Draft(opened);
    const gatherer = new Gatherer(draft);
    for (const edit of edits) gatherer.take(edit);
    return checkWritten(draft, apply(draft));
  });
}
