/** Where the making of a copy stands. */
import type { ShareReport } from "../../partner/sharing";

export type Kind = ShareReport["kind"];

/** A copy that was made, ready to be saved. */
export interface Made {
  readonly report: ShareReport;
  readonly bytes: Uint8Array;
  readonly fileName: string;
}

/** How a copy that was made reaches whoever asked for it. */
export type Handed =
  /** It stands in a window of its own, and can be saved as a file too, or not. */
  | { readonly how: "opened"; readonly isSavable: boolean }
  /** A file to save; the sentence says why it did not open, where it should have. */
  | { readonly how: "to-save"; readonly sentence?: string };

export type ShareState =
  | { readonly at: "looking" }
  /** The program does not hand out its file; the sentence says what to do. */
  | { readonly at: "not-offered"; readonly sentence: string }
  | { readonly at: "ready" }
  | { readonly at: "making"; readonly kind: Kind }
  | { readonly at: "made"; readonly made: Made; readonly handed: Handed }
  /** The workbook is no longer what the copy was made of. */
  | { readonly at: "changed" }
  | { readonly at: "failed"; readonly sentence: string };

export type ShareAct =
  | { readonly do: "offered" }
  | { readonly do: "not-offered"; readonly sentence: string }
  | { readonly do: "make"; readonly kind: Kind }
  | { readonly do: "made"; readonly made: Made; readonly handed: Handed }
  | { readonly do: "changed" }
  | { readonly do: "failed"; readonly sentence: string };

export const firstState: ShareState = { at: "looking" };

/** One copy is made at a time: what is asked meanwhile is not heard. */
export function reduceShare(state: ShareState, act: ShareAct): ShareState {
  switch (act.do) {
    case "offered":
      return state.at === "looking" ? { at: "ready" } : state;
    case "not-offered":
      return { at: "not-offered", sentence: act.sentence };
    case "make":
      return canMake(state) ? { at: "making", kind: act.kind } : state;
    case "made":
      return state.at === "making" ? { at: "made", made: act.made, handed: act.handed } : state;
    case "changed":
      return state.at === "made" ? { at: "changed" } : state;
    case "failed":
      return state.at === "making" ? { at: "failed", sentence: act.sentence } : state;
  }
}

export const canMake = ({ at }: ShareState): boolean =>
  at !== "looking" && at !== "not-offered" && at !== "making";
