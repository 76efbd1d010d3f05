import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { baseFrom, localBase } from "../../src/cli/build/base";
import { checksumList, readChecksums } from "../../src/cli/build/checksums";
import { finishBuild } from "../../src/cli/build/finish";
import { leftIn } from "../../src/cli/build/leftovers";
import { sizesOf } from "../../src/cli/build/sizes";

const folder = mkdtempSync(join(tmpdir(), "titrebook-build-"));
const base = "https://co-op.example/titrebook/";
const files: Record<string, string> = {
  "functions.js": "1+1",
  "help/index.html": "<p>help</p>",
  "manifest.xml": `<a DefaultValue="${base}taskpane.html"/>`,
};

beforeEach(() => {
  mkdirSync(join(folder, "help"), { recursive: true });
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const finish = (at = base, made = Object.keys(files), isWhole = true) =>
  finishBuild({ folder, base: at, made: new Set(made), isWhole });

describe("the base of a build", () => {
  it("is this machine when nothing is asked", () => {
    expect(baseFrom(undefined)).toBe(localBase);
  });

  it.each([
    ["https://your.host/titrebook", "https://your.host/titrebook/"],
    ["https://your.host/a/b///", "https://your.host/a/b/"],
    ["https://your.host", "https://your.host/"],
    ["https://your.host:8443/t", "https://your.host:8443/t/"],
  ])("%s is written %s", (asked, written) => {
    expect(baseFrom(asked)).toBe(written);
  });

  it.each([
    ["your.host/titrebook", /no address/],
    [true, /no address/],
    ["http://your.host", /not https/],
    ["https://your.host/?v=1", /has a \?/],
  ])("%s is refused with a sentence that shows how", (asked, says) => {
    expect(() => baseFrom(asked)).toThrow(says);
    expect(() => baseFrom(asked)).toThrow(/--env base=https:/);
  });
});

describe("the end of a build", () => {
  it("writes sums that sha256sum finds right", () => {
    finish();
    const list = readFileSync(join(folder, "checksums.txt"), "utf8");
    expect(readChecksums(list).map(({ name }) => name)).toEqual(Object.keys(files).sort());
    for (const { name, sum } of readChecksums(list)) {
      expect(sum).toBe(
        createHash("sha256")
          .update(files[name] ?? "")
          .digest("hex"),
      );
    }
    const said = execFileSync("sha256sum", ["-c", "checksums.txt"], { cwd: folder });
    expect(String(said).match(/: OK/g)).toHaveLength(3);
  });

  it.each(["https://localhost:3001/help", "http://127.0.0.1:3000", "http://[::1]:80/"])(
    "fails when %s is left in a file, and names the file",
    (address) => {
      writeFileSync(join(folder, "help/index.html"), `<a href="${address}">`);
      expect(() => finish()).toThrow(/help\/index\.html holds https?:\/\//);
      expect(() => finish(localBase)).not.toThrow();
    },
  );

  it("knows the two harmless texts of the embedded spreadsheet, and no others", () => {
    const texts = 't.startsWith("http://localhost:3002")||"http://localhost"';
    expect(leftIn("workbench.grid.js", texts)).toEqual([]);
    expect(leftIn("taskpane.js", texts)).toHaveLength(2);
    expect(leftIn("workbench.grid.js", "https://localhost:3001/")).toHaveLength(1);
  });

  it("takes files of an earlier build out of what is given to others", () => {
    writeFileSync(join(folder, "old.js"), "old");
    finish(localBase);
    expect(existsSync(join(folder, "old.js"))).toBe(true);
    finish();
    expect(existsSync(join(folder, "old.js"))).toBe(false);
    expect(existsSync(join(folder, "help/index.html"))).toBe(true);
  });

  it("keeps the parts that are there where one alone was made, and looks through them too", () => {
    finish();
    finish(base, ["manifest.xml"], false);
    const list = readFileSync(join(folder, "checksums.txt"), "utf8");
    expect(readChecksums(list).map(({ name }) => name)).toEqual(Object.keys(files).sort());
    writeFileSync(join(folder, "functions.js"), 'fetch("https://localhost:3001/")');
    expect(() => finish(base, ["manifest.xml"], false)).toThrow(/functions\.js holds https/);
  });

  it("says sizes raw and packed, and what is too much", () => {
    const large = new Map([
      ["functions.js", Buffer.from(crypto.getRandomValues(new Uint8Array(40_000)))],
    ]);
    const found = sizesOf(large).find(({ what }) => what === "functions.js");
    expect(found?.raw).toBe(40_000);
    expect(found?.packed).toBeGreaterThan(39_000);
    expect(checksumList(large)).toMatch(/^[0-9a-f]{64} {2}functions\.js\n$/);
  });
});
