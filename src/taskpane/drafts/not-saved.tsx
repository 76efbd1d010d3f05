/** What is typed lives as long as the pane, and is said to. */
import { Say } from "../widgets/say";

/** @param instead what to do, or what becomes of it, to the end of the sentence */
export function NotSaved({ instead }: { instead: string }) {
  return <Say tone="check">{`This browser cannot save your work: ${instead}`}</Say>;
}

export const recordFirst = "record before you close the pane.";
