/** What a call of ours comes to, in plain formulas. */
import type { TwinAnswer } from "../../functions/twin";
import type { Call } from "../../sheet/formula/tree";
import { noTwin } from "./no-twin";
import type { Builder } from "./workings/builder";
import type { Located } from "./workings/located";

export type Answer = Exclude<TwinAnswer, { kind: "none" }>;

/** How a call that stands inside something else is answered. */
export interface CallsInside {
  /** Throws NoTwin where it has no plain formula. */
  answerTo(call: Call, builder: Builder): Answer;
  /** As text that can stand there. */
  nestedText(call: Call, builder: Builder): string;
}

/** A table that something else works on, in helper cells. */
export function blockOf(
  { formulas }: Extract<Answer, { kind: "table" }>,
  label: string,
  builder: Builder,
): Located {
  const words = () => noTwin("part of its table is words that have no plain formula");
  return builder.block(
    label,
    formulas.map((row) => row.map((cell) => cell ?? words())),
  );
}
