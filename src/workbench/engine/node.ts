/** The way into the headless engine from Node: see opentype-hook.mjs for why there is one. */
import { register } from "node:module";
import type { Book } from "../../sheet/book";
import type { HeadlessWorkbook } from "./headless";

register("./opentype-hook.mjs", import.meta.url);

/** Opens a book with every formula computed. Close it when done. */
export async function openHeadless(book: Book): Promise<HeadlessWorkbook> {
  const headless = await import("./headless");
  return headless.HeadlessWorkbook.open(book);
}
