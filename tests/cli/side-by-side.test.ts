/** Programs side by side: none that fails is lost, whatever the others do. */
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { inTurn, sideBySide } from "../../src/cli/proving/side-by-side";

const says = (words: string, code = 0) => ({
  command: `node -e console.log("${words}");process.exitCode=${String(code)}`,
});

describe("programs side by side", () => {
  let lines: string[] = [];
  beforeEach(() => {
    lines = [];
    vi.spyOn(console, "log").mockImplementation((line: string) => {
      lines.push(line);
    });
  });
  afterEach(() => {
    vi.restoreAllMocks();
    process.exitCode = undefined;
  });

  it("end well when all of them do, and those behind them are begun", async () => {
    await sideBySide([says("one"), { ...says("two"), isPatient: true, then: [says("three")] }]);
    expect(process.exitCode).toBeUndefined();
    const said = lines.join("\n");
    for (const word of ["one", "two", "three"]) expect(said).toContain(`\n${word}\n`);
    expect(said).not.toContain("FAILED");
    expect(said.indexOf("begun: " + says("three").command)).toBeGreaterThan(
      said.indexOf("well: " + says("two").command),
    );
  });

  it("end with 1 when one fails, with its words last; the others go on, and none behind it is begun", async () => {
    const broken = { ...says("broken", 3), then: [says("behind")] };
    await sideBySide([broken, { ...says("first"), then: [says("second")] }]);
    expect(process.exitCode).toBe(1);
    const said = lines.join("\n");
    expect(said).toContain("\nsecond\n");
    expect(said).not.toContain("behind");
    expect(said.lastIndexOf("\nbroken\n")).toBeGreaterThan(said.indexOf("\nsecond\n"));
    expect(lines.at(-1)).toContain(`FAILED: ${broken.command}`);
  });

  it("go on in turn after one that failed, and end with 1", async () => {
    await sideBySide(inTurn([says("one"), says("two", 1), says("three")]));
    expect(process.exitCode).toBe(1);
    const said = lines.join("\n");
    const began = ["one", "two", "three"].map((word) =>
      said.indexOf(`begun: ${says(word, word === "two" ? 1 : 0).command}`),
    );
    expect(began).toEqual([...began].sort((a, b) => a - b));
    expect(began).not.toContain(-1);
    expect(said).toContain("\nthree\n");
    expect(lines.at(-1)).toContain('log("two")');
    expect(lines.at(-1)).not.toContain('log("three")');
  });

  it("end with 1 when a program is not there", async () => {
    await sideBySide([{ command: "no-such-program-of-ours --at-all" }, says("one")]);
    expect(process.exitCode).toBe(1);
    expect(lines.at(-1)).toContain("FAILED: no-such-program-of-ours --at-all");
  });

  it("end with 1 when one is killed", async () => {
    await sideBySide([{ command: "node -e process.kill(process.pid)" }]);
    expect(process.exitCode).toBe(1);
  });
});
