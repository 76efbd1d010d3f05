/** Whose drafts the pane offers beside a document of the spreadsheet program, by where that is. */

/** A file on the web is the same whatever is asked of its address; on a disk any sign may be in a name. */
export const workbookAt = (url: string): string => {
  const place = /^https?:/i.test(url) ? url.replace(/[?#][^]*$/, "") : url;
  return place === "" ? "" : `document/${place}`;
};
