/** The workflow that a fork can switch on: it runs only when asked, may do no more than it must, and runs what there is. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./sources-of";

const workflow = readFileSync(join(root, ".github/workflows/pages.yml"), "utf8");
const lines = workflow.split("\n").map((line) => line.replace(/(^|\s)#.*$/, ""));
const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  scripts: Record<string, string>;
};

/** The lines that stand deeper than this one, below it. */
function below(head: string): string[] {
  const from = lines.indexOf(head);
  const depth = head.search(/\S/);
  const rest = lines.slice(from + 1);
  const end = rest.findIndex((line) => line.trim() !== "" && line.search(/\S/) <= depth);
  return rest.slice(0, end < 0 ? undefined : end).filter((line) => line.trim() !== "");
}

describe("the workflow for static pages", () => {
  it("runs only when somebody presses a button", () => {
    expect(below("on:")).toEqual(["  workflow_dispatch:"]);
  });

  it("may read what is there, and publish, and nothing else", () => {
    expect(below("permissions:")).toEqual(["  contents: read", "  pages: read"]);
    expect(below("    permissions:")).toEqual(["      pages: write", "      id-token: write"]);
    expect(workflow).not.toMatch(/secrets\.|pull_request|schedule/);
  });

  it("takes steps of nobody but the host's own, each of a version", () => {
    const taken = [...workflow.matchAll(/uses: (\S+)/g)].map(([, name = ""]) => name);
    expect(taken.length).toBe(5);
    expect(taken.filter((name) => !/^actions\/[a-z-]+@v\d+$/.test(name))).toEqual([]);
  });

  it("runs commands of this project, and puts no text from elsewhere into a command", () => {
    const run = [...workflow.matchAll(/run: (.+)/g)].map(([, command = ""]) => command);
    expect(run).toHaveLength(3);
    expect(run.filter((command) => command.includes("${{"))).toEqual([]);
    for (const [, name = ""] of workflow.matchAll(/npm run ([\w:-]+)/g)) {
      expect(Object.keys(scripts)).toContain(name);
    }
  });

  it("checks the sums of what it publishes, in the folder that it publishes", () => {
    const order = ["npm ci", "npm run build", "sha256sum --check", "path: dist"].map((each) =>
      workflow.indexOf(each),
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order).not.toContain(-1);
  });
});
