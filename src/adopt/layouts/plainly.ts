/** Logbooks however they are laid out, as plain tables: one row a titration, one titre a cell. */
import { type Book, withTitresSplit } from "./split-titres";
import { withRowsAsOne } from "./rows-as-one";
import { withTablesBeside } from "./tables-beside";

export function plainly(books: readonly Book[]): Book[] {
  const alone = books.map((book) => withRowsAsOne(withTitresSplit(book)));
  return alone.map((book) => withTablesBeside(book, alone));
}

/** Why no formula can count a table's titres as they stand; "" where one can. */
export function titresAsLaid(book: Book): string {
  if (withTitresSplit(book) !== book)
    return "each titre in a cell of its own: several stand in one";
  return withRowsAsOne(book) === book
    ? ""
    : "the titres of a lot side by side in one row: they stand in several rows";
}
