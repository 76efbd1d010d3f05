/**
 * Number formats that have a number and no text in the file (ECMA-376 part 1, 18.8.30). 14 is "the
 * short date of this place": shown here year first, which nobody misreads.
 */
export const builtInFormats: Readonly<Record<number, string>> = {
  0: "General",
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "yyyy-mm-dd",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "yyyy-mm-dd h:mm",
  37: "#,##0 ;(#,##0)",
  38: "#,##0 ;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
  48: "##0.0E+0",
  49: "@",
};

/** Those of them that say the same in every place, by text: for writing. */
export const plainFormatIds: ReadonlyMap<string, number> = new Map(
  [0, 1, 2, 3, 4, 9, 10, 11, 12, 13, 48, 49].map((id) => [builtInFormats[id] ?? "General", id]),
);
