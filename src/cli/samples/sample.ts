/** A sample workbook: its file, and how its bytes are made. The same bytes every time. */
import type { Book } from "../../sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../xlsx";
import { computedBook } from "./computed";

export interface Sample {
  /** Its name in sample-workbooks/. */
  readonly file: string;
  /** `made` gives the bytes of another sample, for those that are made from one. */
  make(made: (file: string) => Promise<Uint8Array>): Promise<Uint8Array>;
}

/** A book as a file, every formula with its result. */
export async function fileOf(book: Book): Promise<Uint8Array> {
  const made = newXlsx(await computedBook(book));
  if (isFileProblem(made)) throw new Error(`${book.name}: ${sayFile(made)}`);
  return made;
}

export const sampleOf = (file: string, book: () => Book): Sample => ({
  file,
  make: () => fileOf(book()),
});
