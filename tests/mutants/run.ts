/** The tests that look at core and functions most closely, run again and again, a mutation each time. */
import { join } from "node:path";
import { createVitest, type TestModule, type TestSpecification, type Vitest } from "vitest/node";
import { root } from "../rules/sources-of";
import type { Mutation } from "./mutations";

const folders = ["core", "functions", "published", "second-opinion"];

/** Thousands of questions each: they are asked last, most mutations need far fewer. */
const thorough = /hostile|laws|coverage|false-alarms|section-seven|number-meant/;
const isThorough = ({ moduleId }: TestSpecification): boolean => thorough.test(moduleId);

/** No part takes so long, ms; a loop that a mutation leaves without end takes for ever. */
const longest = 600_000;
export const unending = "no test: the work never ended";

export type Part = "quick" | "thorough";

export class MutatedSuite {
  private constructor(
    private readonly vitest: Vitest,
    private readonly current: { mutation: Mutation | undefined },
  ) {}

  /** A mutation is done to a source as it is loaded: no file is ever changed. */
  static async open(): Promise<MutatedSuite> {
    const current: { mutation: Mutation | undefined } = { mutation: undefined };
    const vitest = await createVitest(
      "test",
      {
        config: false,
        root,
        watch: false,
        setupFiles: ["tests/mutants/stop-at-first.ts"],
        isolate: false,
        pool: "threads",
        maxWorkers: 1,
        testTimeout: longest,
        reporters: [{}],
        include: folders.map((each) => `tests/${each}/**/*.test.ts`),
      },
      {
        plugins: [
          {
            name: "mutant",
            enforce: "pre",
            transform(code, id) {
              const { mutation } = current;
              // a test may load a source anew, as a module by another name
              if (!mutation || id.split("?")[0] !== join(root, mutation.file)) return undefined;
              return code.slice(0, mutation.start) + mutation.text + code.slice(mutation.end);
            },
          },
        ],
      },
    );
    return new MutatedSuite(vitest, current);
  }

  /** The test that failed; undefined when all of them passed. */
  async noticedBy(part: Part, mutation?: Mutation): Promise<string | undefined> {
    const touched = [this.current.mutation, mutation];
    this.current.mutation = mutation;
    for (const each of touched) if (each) this.vitest.invalidateFile(join(root, each.file));
    const specifications = (await this.vitest.globTestSpecifications()).filter(
      (each) => isThorough(each) === (part === "thorough"),
    );
    // what a run before this one found is no answer to this one
    this.vitest.state.filesMap.clear();
    const ended = await Promise.race([
      this.vitest.runTestSpecifications(specifications),
      new Promise<undefined>((late) => setTimeout(late, longest, undefined).unref()),
    ]);
    if (!ended) return unending;
    const { testModules, unhandledErrors } = ended;
    const at = (module: TestModule): string => module.moduleId.slice(root.length);
    for (const module of testModules) {
      for (const test of module.children.allTests("failed"))
        return `${at(module)}: ${test.fullName}`;
    }
    // no test failed, so that nothing was left out: this is for want of what it imports
    const missing = testModules.find((module) => module.state() === "failed");
    if (missing) return `${at(missing)}: is not loaded`;
    if (unhandledErrors.length > 0) return "an error outside every test";
    const passed = testModules.filter((module) => module.state() === "passed").length;
    if (passed < specifications.length) {
      throw new Error(`Only ${String(passed)} of ${String(specifications.length)} files were run.`);
    }
    return undefined;
  }

  close(): Promise<void> {
    return this.vitest.close();
  }
}
