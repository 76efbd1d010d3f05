/** Nobody types into a workbook that is still being worked out: it would be taken for the file's. */
import type { Guard } from "../grid/guard";
import type { Page } from "../page";

/** What the work comes to; undefined when it failed. */
export async function untouched<T>(
  { sheet, pane }: Pick<Page, "sheet" | "pane">,
  guard: Guard,
  work: () => Promise<T>,
): Promise<T | undefined> {
  const { fixed } = guard;
  guard.fixed = undefined;
  for (const part of [sheet, pane]) part.inert = true;
  try {
    return await work();
  } catch {
    guard.fixed = fixed;
    return undefined;
  } finally {
    for (const part of [sheet, pane]) part.inert = false;
  }
}
