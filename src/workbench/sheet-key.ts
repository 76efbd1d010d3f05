/**
 * What the grid calls a sheet inside: its name, since the page goes by names. The grid keeps its sheets
 * in plain objects, in which a few words mean something else: with a sheet of such a name it would
 * change every object of the page.
 */
export const sheetKey = (name: string): string => (name in {} ? `the sheet ${name}` : name);
