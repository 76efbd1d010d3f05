/** How many held cells may no longer hold once others have changed. */
import { blocksRead, type Surroundings } from "./blocks-read";
import { keyAt, placeAt } from "./cell-keys";
import { reading } from "./follow";
import type { HeldFile } from "./held-file";
import { type Asked, type At, put } from "./marks";

/**
 * @param held the formulas that are held
 * @param stuck cells that are held whatever formulas there are
 * @param changed left out themselves
 */
export function affectedCells(
  held: readonly Asked[],
  stuck: HeldFile["stuck"],
  changed: readonly At[],
  around: Surroundings,
): number {
  const reaches = new Map(
    held.map((each) => [
      each,
      each.held === undefined ? each.reads : blocksRead(each.formula, each, around),
    ]),
  );
  // those of which nobody knows what they read may go by anything
  const open: At[] = held.filter((each) => reaches.get(each) === "anything");
  for (const [sheet, cells] of stuck) {
    for (const key of cells.keys()) open.push({ sheet, ...placeAt(key) });
  }
  const found = reading(held, [...changed, ...open], (each) => {
    const reach = reaches.get(each);
    return reach === undefined || reach === "anything" ? [] : reach;
  });
  for (const { sheet, row, column } of open) put(found, sheet, keyAt(row, column), true);
  for (const { sheet, row, column } of changed) found.get(sheet)?.delete(keyAt(row, column));
  return [...found.values()].reduce((sum, cells) => sum + cells.size, 0);
}
