/**
 * Runs beside the page and holds the open file: reading and writing a large one takes seconds, in which
 * the page must go on. It ends with the file, and all it took ends with it.
 */
import type { Answer, Answers, Asked, Letter } from "./asked";
import { FileHolder } from "./file-holder";

interface Surroundings {
  onmessage: (event: { data: Letter<Asked> }) => void;
  postMessage(letter: Letter<Answer<keyof Answers>>): void;
}

const holder = new FileHolder();
const here = self as unknown as Surroundings;
here.onmessage = ({ data: { number, holds } }) => {
  here.postMessage({ number, holds: holder.answer(holds) });
};
