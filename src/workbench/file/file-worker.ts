/** The page's end of the worker that holds the open file. */
import { refused } from "../../sheet/refusal";
import type { Answer, Answers, Asked, Letter } from "./asked";

type Heard = (answer: Answer<keyof Answers>) => void;

const stopped = refused(
  "The file could not be worked on: it may need more memory than there is. Nothing was changed.",
);

export class FileWorker {
  private readonly worker = new Worker(
    /* webpackChunkName: "xlsx" */ new URL("./worker.ts", import.meta.url),
  );
  private readonly waiting = new Map<number, Heard>();
  private last = 0;

  constructor() {
    this.worker.onmessage = ({ data }: MessageEvent<Letter<Answer<keyof Answers>>>) => {
      this.waiting.get(data.number)?.(data.holds);
      this.waiting.delete(data.number);
    };
    this.worker.onerror = () => this.giveUp();
    this.worker.onmessageerror = () => this.giveUp();
  }

  /** Answers with a refusal when it fails; never throws. */
  ask<Ask extends Asked>(asked: Ask): Promise<Answer<Ask["ask"]>> {
    const number = (this.last += 1);
    return new Promise((heard) => {
      this.waiting.set(number, heard as Heard);
      this.worker.postMessage({ number, holds: asked } satisfies Letter<Asked>);
    });
  }

  private giveUp(): void {
    for (const heard of this.waiting.values()) heard(stopped);
    this.waiting.clear();
  }

  close(): void {
    this.worker.terminate();
    this.giveUp();
  }
}
