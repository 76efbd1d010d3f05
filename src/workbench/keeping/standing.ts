/** Where the open workbook is: what the bar says of it. */

/** untouched: the example as it came, of which there is nothing to keep. */
export type Standing = "untouched" | "in file" | "kept" | "not kept";

export interface Known {
  /** What was opened, or saved last, is in a file. */
  readonly isInFile: boolean;
  /** The example, and nothing of it in this browser or in a file. */
  readonly isNew: boolean;
  /** Edited since it was opened, restored, or saved. */
  readonly isEdited: boolean;
  /** The browser has it with the last edit. */
  readonly isKept: boolean;
}

export function standingOf({ isInFile, isNew, isEdited, isKept }: Known): Standing {
  if (!isEdited && isNew) return "untouched";
  if (!isEdited && isInFile) return "in file";
  return isKept ? "kept" : "not kept";
}

const words: Record<Standing, string> = {
  untouched: "",
  "in file": "saved in the file",
  kept: "kept in this browser only",
  "not kept": "not kept yet",
};

export const standingWords = (standing: Standing): string => words[standing];
