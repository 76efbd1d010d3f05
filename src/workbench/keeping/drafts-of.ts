/**
 * Which workbook the drafts of the pane belong to, by a name that stays with it: kept under another id,
 * saved under another name, opened again from its file, it finds what was typed beside it.
 */
import { ownName } from "./own-name";

/** Of the example, however it was changed. */
export const draftsOfExample = "";

/** Of a file that was made elsewhere. */
export const draftsOfFile = (name: string): string => `file/${ownName(name)}`;

const begunHere = "new/";

/** Of a workbook that was begun here, and may never be in a file. */
export const draftsOfNew = (id: string): string => begunHere + id;

/** Was the workbook nowhere but here, so that nobody will open it again? */
export const isNowhereElse = (isInFile: boolean, drafts: string): boolean =>
  !isInFile && drafts.startsWith(begunHere);
