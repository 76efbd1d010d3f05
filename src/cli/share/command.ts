/** What `npm run share` does and says: how it ends, and with which words. */
import { makeCopy } from "./copy";
import { diskFiles } from "./files";
import { readRequest } from "./request";

export interface Ended {
  /** 0 when the copy is written, 1 when it is not, 2 when the command was not understood. */
  readonly code: 0 | 1 | 2;
  readonly said: string;
}

export function share(words: readonly string[]): Ended {
  const request = readRequest(words);
  if (typeof request === "string") return { code: 2, said: request };
  const { isDone, lines } = makeCopy(request, diskFiles, String(process.pid));
  return { code: isDone ? 0 : 1, said: lines.join("\n") };
}
