/** Parts of a guide as Markdown, for the README. Texts are nearly that already. */
import type { Part } from "./guides/guide";

/** Links lead into the help site, which the README is not part of. */
const plain = (said: string): string => said.replace(/\[([^\]]+)\]\([a-z0-9.#-]+\)/g, "$1");

function partOf(part: Part): string {
  switch (part.kind) {
    case "heading":
      return `### ${part.text}`;
    case "text":
      return plain(part.text);
    case "steps":
      return part.items.map((item, index) => `${index + 1}. ${plain(item)}`).join("\n");
    case "points":
      return part.items.map((item) => `- ${plain(item)}`).join("\n");
    case "block":
      return ["```", ...part.lines, "```"].join("\n");
    default:
      throw new Error(`the README has no ${part.kind}`);
  }
}

export const markdownOf = (parts: readonly Part[]): string => parts.map(partOf).join("\n\n");
