/** A table as Markdown, and figures as they stand in one. */
const line = (cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;

export const table = (
  head: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): string => [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");

export const percent = (share: number, places = 1): string => (100 * share).toFixed(places);

export const mL = (step: number): string => `${step} mL`;
