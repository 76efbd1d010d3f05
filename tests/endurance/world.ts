/** Everything one seed lives in: chance, the workbook, the bench, the pane's other memory. */
import { type Draft as BatchDraft, newDraft } from "../../src/taskpane/batch/draft";
import { passingMemory } from "../taskpane/passing-memory";
import { BenchWorld } from "./bench-world";
import { Chance } from "./chance";
import { WorkbookWorld } from "./workbook-world";

export class World {
  readonly chance: Chance;
  readonly bench: BenchWorld;
  readonly workbook = new WorkbookWorld();
  readonly memory = passingMemory();
  batch: BatchDraft = newDraft();
  /** How often what came of it, for the log: "titration recorded". */
  readonly tally = new Map<string, number>();

  constructor(seed: number) {
    this.chance = new Chance(seed);
    this.bench = new BenchWorld(this.chance);
  }

  count(what: string): void {
    this.tally.set(what, (this.tally.get(what) ?? 0) + 1);
  }
}
