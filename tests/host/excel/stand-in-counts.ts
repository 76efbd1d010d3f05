/** What the stand-in counts on a sheet, as "Check this Excel" asks: known after a sync, as all it answers. */
import type { MemoryCell, MemorySheet } from "../memory/book";
import { remote } from "./remote";
import type { Talk } from "./stand-in-range";

/** A result that is not an object of the workbook: its value comes with the sync. */
export function counted({ talk }: Talk, count: () => number): object {
  let known: number | undefined;
  talk.later(() => (known = count()));
  return {
    get value() {
      return known ?? talk.misused("read before it was synced: value");
    },
  };
}

const cellsWith = (sheet: MemorySheet, has: (cell: MemoryCell) => boolean): number =>
  Object.values(sheet.cells).filter(has).length;

export function notesOf(on: Talk, sheet: () => MemorySheet): object {
  const isNoted = ({ note }: MemoryCell): boolean => note !== undefined;
  return remote(on.talk, "notes", {
    gives: { getCount: () => counted(on, () => cellsWith(sheet(), isNoted)) },
  });
}

/** Cells that take words of a list. */
export function listsOn({ talk }: Talk, sheet: () => MemorySheet): object {
  const lists = (): number => cellsWith(sheet(), ({ words }) => words !== undefined);
  return remote(talk, "areas", { isNull: () => lists() === 0, reads: { cellCount: lists } });
}
