/** A sentence set apart: to mind, good to know, or done. The mark says which, not the colour. */
import type { ReactNode } from "react";
import { Together } from "./together";

export interface SayProps {
  readonly tone: "mind" | "know" | "done";
  readonly children: ReactNode;
}

const marks = { mind: "!", know: "i", done: "✓" };
/** The same for a listener. */
const heard = { mind: "Mind: ", know: "Good to know: ", done: "Done: " };

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
