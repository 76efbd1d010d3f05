/** A sentence set apart: something to mind, or good to know. The mark says which, not the colour. */
import type { ReactNode } from "react";

export interface SayProps {
  readonly tone: "mind" | "know";
  readonly children: ReactNode;
}

export function Say({ tone, children }: SayProps) {
  const isMinding = tone === "mind";
  return (
    <div className={isMinding ? "say minding" : "say"}>
      <span className="say-mark" aria-hidden="true">
        {isMinding ? "!" : "i"}
      </span>
      <span>
        <span className="unseen">{isMinding ? "Mind: " : "Good to know: "}</span>
        {children}
      </span>
    </div>
  );
}
