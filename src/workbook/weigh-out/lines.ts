/** Words cut into lines that a page holds, so that no cell need be wrapped to be read on paper. */

/** Letters across the page in the usual type. */
const room = 92;

export function linesOf(text: string): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > room) {
      lines.push(line);
      line = "";
    }
    line = line === "" ? word : `${line} ${word}`;
  }
  return line === "" ? lines : [...lines, line];
}
