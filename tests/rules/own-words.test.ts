/** Words of the workshop that no user is to meet: nobody who titrates knows what they are. */
import { describe, expect, it } from "vitest";
import { codeOf, filesUnder } from "./sources-of";

/** What is shown to a contributor at a command line is no sentence of the product. */
const isShown = (path: string): boolean => !path.startsWith("src/cli/");

/** In a sentence: with a word before it or after it. File names and imports have neither. */
const ours = /\b(?:the|a|this|our) workbench\b|\bworkbench (?:is|has|gets|cannot|does|and|in)\b/i;

describe("a sentence of the product", () => {
  it("never calls the browser page a workbench", () => {
    const found = filesUnder("src")
      .filter(({ path }) => isShown(path))
      .flatMap((file) =>
        codeOf(file)
          .split("\n")
          .filter((line) => ours.test(line))
          .map((line) => `${file.path}: ${line.trim()}`),
      );
    expect(found).toEqual([]);
    expect(ours.test('program: "the workbench",')).toBe(true);
  });
});
