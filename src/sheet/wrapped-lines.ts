/** Words cut into lines of so many letters, one line at least. A longer word has a line of its own. */
export function wrappedLines(text: string, characters: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > characters) {
      lines.push(line);
      line = "";
    }
    line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
