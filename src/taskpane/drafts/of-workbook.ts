/**
 * A draft belongs to one workbook: what was begun beside one is not offered beside another. What has no
 * workbook named to it is of the one that the page comes with, and is called as it always was.
 */

/** As JSON the workbook's name ends where it seems to, whatever is in it: no two come to the same. */
export const ofWorkbook = (what: string, workbook: string): string =>
  workbook === "" ? what : `${what} of ${JSON.stringify(workbook)}`;

/** Is this what `ofWorkbook` makes of something? Never for the workbook without a name. */
export const isOfWorkbook = (key: string, workbook: string): boolean =>
  workbook !== "" && key.endsWith(ofWorkbook("", workbook));
