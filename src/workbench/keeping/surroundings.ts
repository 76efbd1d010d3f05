/** What keeping needs of the page, and of what opens and saves files. */
import type { CellPlace } from "../../sheet/area";
import type { Refusal } from "../../sheet/refusal";

/** The page, as keeping needs it. */
export interface Surroundings {
  readonly edited: {
    readonly now: boolean;
    readonly count: number;
    watch(heard: () => void): void;
  };
  isTyping(): boolean;
  place(): CellPlace | undefined;
  refuse(sentence: string): void;
}

/** What opens and saves files. */
export interface Writer {
  readonly isBusy: boolean;
  /** As it would be saved now. */
  bytes(): Promise<Uint8Array | Refusal>;
  /** Where the workbook is may have changed. */
  named(): void;
}
