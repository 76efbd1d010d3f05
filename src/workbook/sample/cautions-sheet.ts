/** The cautions on a sheet of their own, to be printed and hung beside the vessel. */
import { aboutCautions, cautions } from "../../core/batch/cautions";
import { caution, sheetOfSentences, title, words } from "./cells";

const rows = [
  [title("Cautions")],
  [words(`${aboutCautions} Print this sheet and hang it where the work is done.`)],
  [],
  ...cautions.map((each) => [caution(each)]),
];

export const cautionsSheet = sheetOfSentences("Cautions", rows);
