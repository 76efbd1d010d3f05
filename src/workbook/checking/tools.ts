/** What a part of the check works with, and the few things that all of them do. */
import {
  type Block,
  type CellContent,
  type Content,
  type Fault,
  type Host,
  isFault,
  type Step,
} from "../../sheet/port";
import type { CheckedProgram } from "../../sheet/port/checked-program";

export interface Tools {
  readonly host: Host;
  readonly program: CheckedProgram;
  /** Lets the program work its cells out. */
  readonly pause: () => Promise<void>;
  /** Milliseconds, from whenever. */
  readonly now: () => number;
}

/** Why a part could go no further; its line is red with these words. */
export class Stopped extends Error {}

export const stoppedBy = ({ code, about }: Fault): Stopped =>
  new Stopped(`The program answered "${code}"${about === "" ? "" : ` (${about})`}.`);

/** The sheet on which the check writes its cells. */
export const workSheet = "Check cells";

export const cellsAt = (
  row: number,
  column: number,
  rows = 1,
  columns = 1,
  sheet = workSheet,
): Block => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

export const formula = (text: string): Content => ({ kind: "formula", formula: text });
export const value = (held: string | number | boolean): Content => ({ kind: "value", value: held });
export const keep: Content = { kind: "keep" };

export const put = (block: Block, contents: readonly (readonly Content[])[]): Step => ({
  do: "set-cells",
  block,
  contents,
});

/** Writes what counts; what only decorates is no matter here. */
export async function write({ host }: Tools, ...steps: Step[]): Promise<void> {
  const done = await host.write("Check this Excel", steps);
  if (isFault(done)) throw stoppedBy(done);
}

export async function read(
  { host }: Tools,
  block: Block,
): Promise<readonly (readonly CellContent[])[]> {
  const found = await host.read([{ ask: "values", block }]);
  if (isFault(found)) throw stoppedBy(found);
  const [cells] = found;
  if (cells?.kind !== "values") throw new Stopped(`The sheet ${block.sheet} cannot be read.`);
  return cells.values;
}

/** As often as a program that is slow may be asked, a pause before each. */
const mostReads = 60;

const isWaiting = (held: CellContent): boolean =>
  typeof held === "object" && ["#BUSY!", "#GETTING_DATA"].includes(held.error);

/** Reads until nothing waits for its answer, or as often as it may. */
export async function answered(
  tools: Tools,
  block: Block,
): Promise<readonly (readonly CellContent[])[]> {
  let found = await read(tools, block);
  for (let reads = 1; reads < mostReads && found.flat().some(isWaiting); reads += 1) {
    await tools.pause();
    found = await read(tools, block);
  }
  return found;
}

/** What a cell holds, in words. */
export const shown = (held: CellContent | undefined): string => {
  if (held === undefined || held === "") return "nothing";
  return typeof held === "object" ? held.error : JSON.stringify(held);
};
