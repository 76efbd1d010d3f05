/** Logbooks however they are laid out, as plain tables: one row a titration, one titre a cell. */
import { type Book, withTitresSplit } from "./split-titres";
import { withRowsAsOne } from "./rows-as-one";
import { withTablesBeside } from "./tables-beside";

export function plainly(books: readonly Book[]): Book[] {
  const alone = books.map((book) => withRowsAsOne(withTitresSplit(book)));
  return alone.map((book) => withTablesBeside(book, alone));
}
