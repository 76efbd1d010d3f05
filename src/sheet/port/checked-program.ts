/**
 * What only "Check this Excel" asks of a spreadsheet program, beside the port: what it is, what it counts
 * on a sheet, and what arrives at our functions. Everybody else does without.
 */
import type { Fault } from "./fault";

export interface RequirementSet {
  readonly name: string;
  /** The newest that is named here: "1.17"; undefined where none is. */
  readonly newest: string | undefined;
}

export interface ProgramFacts {
  readonly kind: "facts";
  /** "16.0.18129.20158". */
  readonly version: string;
  /** "PC", "Mac", "OfficeOnline". */
  readonly platform: string;
  /** What shows the pane: "Edg/120.0", of which nothing tells who uses it. */
  readonly engine: string;
  /** "," or "."; undefined where it is not told. */
  readonly decimalMark: string | undefined;
  readonly sets: readonly RequirementSet[];
}

/** What the program itself counts; undefined where it cannot be asked. */
export interface CountedOnSheet {
  readonly kind: "counted";
  readonly charts: number | undefined;
  readonly notes: number | undefined;
  /** Cells that take words of a list. */
  readonly lists: number | undefined;
}

/** A call of one of our functions, as the program made it. */
export type Heard = (id: string, given: readonly unknown[]) => void;

export interface CheckedProgram {
  facts(): Promise<ProgramFacts | Fault>;
  count(sheet: string): Promise<CountedOnSheet | Fault>;
  protect(sheet: string, isProtected: boolean): Promise<undefined | Fault>;
  /** For good: nothing takes it back. */
  removeSheets(names: readonly string[]): Promise<undefined | Fault>;
  /** An empty workbook in a window of its own. */
  openEmpty(): Promise<undefined | Fault>;
  /** Calls back on each call until the returned function is called. */
  listen(heard: Heard): () => void;
  /** What the pane's content security policy has refused so far: "frame-src https://…". */
  refusals(): readonly string[];
}
