/** What one is told of a file just opened: what is not worked out here, and what it keeps unshown. */
import { keptWords } from "../../xlsx/kept-words";
import type { OpenedFile } from "../file/opened-file";
import { heldList, heldWords, type Holds } from "./held-list";
import type { Part } from "./news";

function keptList(file: OpenedFile): string[] {
  const others = file.sheets.filter(({ kind }) => kind === "other").map(({ name }) => name);
  return [
    ...file.kept.map(keptWords),
    ...others.map((name) => `the sheet ${name}, which has no cells`),
  ];
}

export function openedWords(name: string, file: OpenedFile, grid: Holds): [string, ...Part[]] {
  const held = heldList(grid);
  const kept = keptList(file);
  const parts: Part[] = [];
  if (held.length > 0) parts.push({ says: heldWords(grid), items: held });
  if (kept.length > 0) {
    parts.push({ says: "Not shown here, and kept in the file as it is:", items: kept });
  }
  return [`${name} is open.${parts.length === 0 ? " All of it is shown." : ""}`, ...parts];
}
