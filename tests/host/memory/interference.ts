/** What may go wrong, for tests: before a call, at any step of a write, or after it was done. */
import type { Fault } from "../../../src/sheet/port";

export interface Call {
  readonly verb: "capabilities" | "read" | "write" | "fileBytes";
  /** 1 for the first call of any verb. */
  readonly count: number;
  /** The step that is about to be done, from 0; after: everything is done, the answer is not given. */
  readonly moment: "before" | number | "after";
}

/** A fault to answer with, undefined to go on. May throw, or take its time. */
export type Interference = (call: Call) => Fault | undefined | Promise<Fault | undefined>;

export const noInterference: Interference = () => undefined;
