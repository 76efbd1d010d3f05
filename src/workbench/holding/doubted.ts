/** The cells whose results of now are doubtful, or read such a one: shown, and not saved. */
import { heldCells } from "./follow";
import type { Asked, At, Marks } from "./marks";
import type { ReadBlock } from "./readers";
import { doubtful, type Reason } from "./reasons";

/** What the engine knows of the results it has given. */
export interface DoubtedResults {
  /** Another one whenever something was doubted, or is no more. */
  readonly version: number;
  isDoubtful(place: At & { readonly unit: string }): boolean;
}

/** Kept until the formulas or the doubts are others: the grid asks for every cell it draws. */
export class Doubted {
  results: DoubtedResults | undefined;
  private version = -1;
  private of: readonly Asked[] | undefined;
  private found: Marks<Reason> = new Map();

  cells(
    unit: string,
    asked: readonly Asked[],
    areaOf: (at: At) => ReadBlock | undefined,
  ): Marks<Reason> {
    const { results } = this;
    if (!results) return this.found;
    if (this.of === asked && this.version === results.version) return this.found;
    this.of = asked;
    this.version = results.version;
    this.found = heldCells({
      asked,
      stuck: new Map(),
      ownReason: ({ sheet, row, column, held }) =>
        held === undefined && results.isDoubtful({ unit, sheet, row, column })
          ? doubtful
          : undefined,
      areaOf,
    });
    return this.found;
  }
}
