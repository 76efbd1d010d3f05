/** Words that fit their room. */
import { textWidth } from "../../../sheet/letters";

export const usual = 11;

export const widthOf = (text: string, size: number = usual, isBold = false): number =>
  textWidth(text, isBold) * size;

/** Cut off with three dots where it is too wide. */
export function fitted(text: string, room: number, size: number = usual, isBold = false): string {
  if (widthOf(text, size, isBold) <= room) return text;
  const letters = [...text];
  while (letters.length > 0 && widthOf(`${letters.join("")}…`, size, isBold) > room) letters.pop();
  return letters.length === 0 ? "" : `${letters.join("").trimEnd()}…`;
}

/** In so many lines at the most, the last one cut off. */
export function inLines(text: string, room: number, most: number, size: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && lines.length < most - 1 && widthOf(longer, size, true) > room) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line].map((each) => fitted(each, room, size, true)).filter(Boolean);
}
