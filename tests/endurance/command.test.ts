/** The long walks are started by hand, and so must start. */
import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";

const endure = (...given: string[]) =>
  spawnSync(process.execPath, ["--import", "tsx", "tests/endurance/command.ts", ...given], {
    cwd: root,
    encoding: "utf8",
    timeout: 300_000,
  });

describe("npm run endure", () => {
  it.each([["a day", []] as const, ["a week", ["--week"]] as const])(
    "walks %s of a few steps and says how many held",
    (_, kind) => {
      const { status, stdout, stderr } = endure(...kind, "--seeds", "1", "--steps", "12");
      expect(stderr).toBe("");
      expect(stdout).toContain("1 held, 0 failed");
      expect(status).toBe(0);
    },
  );
});
