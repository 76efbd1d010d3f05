/** A sentence set apart, of three kinds: to know, to check, safety. The mark says which, not the colour. */
import type { ReactNode } from "react";
import { Together } from "./together";

export interface SayProps {
  readonly tone: "know" | "check" | "safety";
  readonly children: ReactNode;
}

const marks = { know: "i", check: "!", safety: "⚠" };
/** The same for a listener. */
const heard = { know: "To know: ", check: "To check: ", safety: "Safety: " };

export function Say({ tone, children }: SayProps) {
  return (
    <div className={`say say-${tone}`}>
      <span className="say-mark" aria-hidden="true">
        {marks[tone]}
      </span>
      <span>
        <span className="unseen">{heard[tone]}</span>
        <Together>{children}</Together>
      </span>
    </div>
  );
}
