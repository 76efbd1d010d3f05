/** What is held from the start, and whether a cell is. */
import type { HeldFile } from "./held-file";
import type { HeldPlace } from "./marks";

export interface HeldTerms {
  readonly file?: HeldFile;
  readonly marks?: readonly HeldPlace[];
  /** Nothing is worked out, for this reason. */
  readonly all?: string;
}

export type IsHeld = (sheet: string, row: number, column: number) => boolean;
