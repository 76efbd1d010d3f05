import {
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { spawnSync } from "node:child_process";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { share } from "../../src/cli/share/command";
import { makeCopy, type Outcome } from "../../src/cli/share/copy";
import { diskFiles, type Files } from "../../src/cli/share/files";
import { readRequest, type Request } from "../../src/cli/share/request";
import { bookOf, made, partsOf } from "../xlsx/files";
import { root } from "../rules/sources-of";

const log = bookOf(
  '<row r="2"><c r="A2"><v>2.4</v></c><c r="B2"><v>0.15</v></c><c r="C2"><f>_xldudf_TITRE_CORRECTED(A2,B2)</f><v>2.25</v></c></row>',
);

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "share-"));
  writeFileSync(join(folder, "in.xlsx"), log);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const at = (name: string): string => join(folder, name);
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(at(name)));

function copy(more: Partial<Request> = {}, files: Files = diskFiles): Outcome {
  const from = at("in.xlsx");
  const to = at("out.xlsx");
  return makeCopy({ from, to, kind: "partner", mayReplace: false, ...more }, files, "1");
}

const sentence = ({ isDone, lines }: Outcome): string => {
  expect(isDone).toBe(false);
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/^.{6,400}\.?$/);
  return lines[0] ?? "";
};

describe("what is asked", () => {
  it.each([
    [[], /Name two files/],
    [["a.xlsx"], /Name two files/],
    [["a.xlsx", "b.xlsx", "c.xlsx"], /no more/],
    [["a.xlsx", "b.xlsx", "--nubmers"], /There is no option --nubmers/],
    [["a.xlsx", "b.csv"], /ends in \.xlsx/],
    [["a.xlsm", "b.xlsx"], /ends in \.xlsm/],
  ])("is refused with how it is asked: %j", (given, words) => {
    expect(readRequest(given)).toMatch(words);
  });

  it("is two files, and what is to be done, in any order", () => {
    expect(readRequest(["--force", "a.XLSX", "--numbers", "b.xlsx"])).toEqual({
      from: "a.XLSX",
      to: "b.xlsx",
      kind: "numbers",
      mayReplace: true,
    });
  });
});

describe("a copy", () => {
  it("is written, with its report, and leaves the file it was made from", () => {
    const { isDone, lines } = copy();
    expect(isDone).toBe(true);
    expect(lines[0]).toBe(`Written: ${at("out.xlsx")}`);
    expect(lines.join("\n")).toContain("1 formula on Data");
    expect(partsOf(bytesOf("out.xlsx"))["xl/worksheets/sheet1.xml"]).not.toMatch(/TITRE/i);
    expect(bytesOf("in.xlsx")).toEqual(log);
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
  });

  it("with nothing to convert is written all the same, and says so", () => {
    const plain = bookOf('<row r="2"><c r="A2"><v>2.4</v></c></row>');
    writeFileSync(at("in.xlsx"), plain);
    const { isDone, lines } = copy();
    expect(isDone).toBe(true);
    expect(lines[1]).toMatch(/^Nothing to convert/);
    expect(bytesOf("out.xlsx")).toEqual(plain);
  });

  it("in place of another is written when that was asked for", () => {
    writeFileSync(at("out.xlsx"), "old");
    expect(copy({ mayReplace: true }).isDone).toBe(true);
    expect(bytesOf("out.xlsx").length).toBeGreaterThan(1000);
  });
});

describe("a place that cannot be taken", () => {
  it("is one where a file is already", () => {
    writeFileSync(at("out.xlsx"), "old");
    expect(sentence(copy())).toContain("add --force");
    expect(readFileSync(at("out.xlsx"), "utf8")).toBe("old");
  });

  it.each([
    ["the file itself", () => undefined, "in.xlsx"],
    [
      "another way to say it",
      () => {
        mkdirSync(at("sub"));
      },
      "sub/../in.xlsx",
    ],
    [
      "a symbolic link",
      () => {
        symlinkSync(at("in.xlsx"), at("link.xlsx"));
      },
      "link.xlsx",
    ],
    [
      "a second name",
      () => {
        linkSync(at("in.xlsx"), at("second.xlsx"));
      },
      "second.xlsx",
    ],
  ])("is the file the copy is made from: %s, even with --force", (_, prepare, name) => {
    prepare();
    const said = sentence(copy({ to: `${folder}/${name}`, mayReplace: true }));
    expect(said).toContain("is the file the copy is made from");
    expect(bytesOf("in.xlsx")).toEqual(log);
  });

  it("is a folder, and a link that leads nowhere", () => {
    mkdirSync(at("out.xlsx"));
    expect(sentence(copy({ mayReplace: true }))).toContain("it is not a file");
    symlinkSync(at("nowhere"), at("lost.xlsx"));
    expect(sentence(copy({ to: at("lost.xlsx") }))).toContain("is there already");
  });

  it("is in a folder that is not there, or in what is no folder", () => {
    expect(sentence(copy({ to: at("no/out.xlsx") }))).toContain("There is no folder");
    expect(sentence(copy({ to: at("in.xlsx/out.xlsx") }))).toContain("is not a folder");
  });
});

describe("a file that cannot be read", () => {
  it("is missing, a folder, no workbook, or one with a password", () => {
    expect(sentence(copy({ from: at("none.xlsx") }))).toContain("There is no file");
    mkdirSync(at("folder.xlsx"));
    expect(sentence(copy({ from: at("folder.xlsx") }))).toContain("is a folder");
    writeFileSync(at("text.xlsx"), "not a workbook");
    expect(sentence(copy({ from: at("text.xlsx") }))).toContain("not an .xlsx workbook");
    writeFileSync(at("cut.xlsx"), log.subarray(0, log.length / 2));
    sentence(copy({ from: at("cut.xlsx") }));
    expect(existsSync(at("out.xlsx"))).toBe(false);
  });
});

const fault = (code: string): Error => Object.assign(new Error(code), { code });

/** The disk with one step that fails. */
const failing = (step: keyof Files, code: string): Files => ({
  ...diskFiles,
  [step]: () => {
    throw fault(code);
  },
});

/** A disk that takes half of the bytes and is then full. */
const filling: Files = {
  ...diskFiles,
  create(path, bytes) {
    diskFiles.create(path, bytes.subarray(0, bytes.length / 2));
    throw fault("ENOSPC");
  },
};

describe("a disk that fails", () => {
  const before = (): void => {
    writeFileSync(at("out.xlsx"), "old");
  };
  const nothingLost = (): void => {
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
    expect(readFileSync(at("out.xlsx"), "utf8")).toBe("old");
    expect(bytesOf("in.xlsx")).toEqual(log);
  };

  it.each([
    ["full when the file is made", failing("create", "ENOSPC"), /is full: nothing was written/],
    ["full half-way", filling, /is full: nothing was written/],
    ["over its quota", failing("create", "EDQUOT"), /no room left/],
    ["read-only", failing("create", "EROFS"), /can only be read/],
    ["a folder that may not be written to", failing("create", "EACCES"), /may not be written to/],
    ["full when it is named", failing("nameOver", "ENOSPC"), /is full/],
    ["one that will not rename", failing("nameOver", "EACCES"), /may not be written to/],
    ["one with a fault of another kind", failing("create", "EIO"), /cannot be written: EIO/],
    ["one that cannot be read", failing("read", "EIO"), /cannot be read: EIO/],
    ["a file that may not be read", failing("read", "EACCES"), /may not be read/],
  ])("says so in a sentence, and nothing is lost: %s", (_, files, words) => {
    before();
    expect(sentence(copy({ mayReplace: true }, files))).toMatch(words);
    nothingLost();
  });

  it("that does not hold what was written is noticed before the file has its name", () => {
    before();
    const forgetful: Files = {
      ...diskFiles,
      create(path, bytes) {
        const wrong = bytes.slice();
        wrong[bytes.length >> 1] = 255 - (wrong[bytes.length >> 1] ?? 0);
        diskFiles.create(path, wrong);
      },
    };
    expect(sentence(copy({ mayReplace: true }, forgetful))).toContain("not what was written");
    nothingLost();
  });

  it("on which another file of that name comes up meanwhile keeps that file", () => {
    const late: Files = {
      ...diskFiles,
      create(path, bytes) {
        diskFiles.create(path, bytes);
        writeFileSync(at("out.xlsx"), "old");
      },
    };
    expect(sentence(copy({}, late))).toContain("is there already");
    nothingLost();
  });
});

describe("npm run share", () => {
  it("ends with 0 when the copy is written, 1 when it is not, 2 when it was not understood", () => {
    writeFileSync(at("office.xlsx"), made("dynamic"));
    const written = share([at("office.xlsx"), at("copy.xlsx"), "--numbers"]);
    expect(written).toMatchObject({ code: 0, said: expect.stringContaining("every figure kept") });
    expect(statSync(at("copy.xlsx")).size).toBeGreaterThan(1000);
    const refused = share([at("office.xlsx"), at("copy.xlsx")]);
    expect(refused.code).toBe(1);
    expect(refused.said.trim().split("\n")).toHaveLength(1);
    expect(share(["--help"]).code).toBe(2);
  });

  it("ends its process so, and says what is wrong where errors are said", () => {
    const run = spawnSync(process.execPath, ["--import", "tsx", "src/cli/share.ts", "--help"], {
      cwd: root,
      encoding: "utf8",
    });
    expect([run.status, run.stdout]).toEqual([2, ""]);
    expect(run.stderr.trim()).toBe(share(["--help"]).said);
  });
});
