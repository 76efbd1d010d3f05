import { dirname } from "node:path";
import { describe, expect, it } from "vitest";
import { filesUnder, type SourceFile } from "./sources-of";

const files = filesUnder("src");
const linesOf = ({ text }: SourceFile): number => text.split("\n").length - 1;

/** How much each key counts for. */
const summed = <Key>(parts: readonly (readonly [Key, number])[]): [Key, number][] => {
  const sums = new Map<Key, number>();
  for (const [key, size] of parts) sums.set(key, (sums.get(key) ?? 0) + size);
  return [...sums];
};

describe("the sizes", () => {
  it("of half the files are 55 lines at most", () => {
    const lines = files.map(linesOf).sort((a, b) => a - b);
    expect(lines[Math.floor(lines.length / 2)]).toBeLessThanOrEqual(55);
  });

  it("of all files stay under 200 lines", () => {
    expect(files.filter((file) => linesOf(file) > 200).map(({ path }) => path)).toEqual([]);
  });

  it("of rooms are under a quarter of the whole", () => {
    const all = files.reduce((sum, file) => sum + linesOf(file), 0);
    const rooms = summed(
      files.map((file) => [file.path.split("/").slice(0, 2).join("/"), linesOf(file)] as const),
    );
    expect(rooms.filter(([, lines]) => lines >= all / 4)).toEqual([]);
  });

  it("of folders are 30 files at most", () => {
    const folders = summed(filesUnder("src", /./).map(({ path }) => [dirname(path), 1] as const));
    expect(folders.filter(([, count]) => count > 30)).toEqual([]);
  });
});
