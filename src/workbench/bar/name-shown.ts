/** The name in the bar and of the window, and where the workbook is. */
import type { Keeper } from "../keeping/keeper";
import { standingWords } from "../keeping/standing";
import type { Page } from "../page";
import { demonstration } from "./sample-file";

export function showName(
  { fileName, standing }: Pick<Page, "fileName" | "standing">,
  keeper: Pick<Keeper, "standing" | "isSample">,
  name: string,
): void {
  const words = standingWords(keeper.standing);
  fileName.textContent = keeper.isSample ? demonstration : name;
  standing.textContent = words;
  document.title = `${name}${words === "" ? "" : ` (${words})`} - Titrebook`;
}
