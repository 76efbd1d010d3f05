/** The doses of a question, worked out again only when the question is another. */
import { useMemo } from "react";
import type { Outcome } from "../../core/problem/problem";
import { type Doses, dosesOf } from "../../workbook/what-if/doses";
import type { WhatIfQuestion } from "../../workbook/what-if/question";

/** Two questions with the same text have the same doses. */
export const textOf = (question: WhatIfQuestion): string => JSON.stringify(question);

export function useDoses(question: WhatIfQuestion): Outcome<Doses> {
  const text = textOf(question);
  // the text stands for the question
  return useMemo(() => dosesOf(question), [text]);
}
