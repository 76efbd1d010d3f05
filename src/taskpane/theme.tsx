/**
 * What is around every task: its look (theme.css has the colours, theme-tokens.css hands them to Fluent's
 * parts, print.css says what goes on paper), and the focus that is not lost.
 */
import "./theme.css";
import "./theme-tokens.css";
import "./print.css";
import type { ReactNode } from "react";
import { useKeptFocus } from "./widgets/kept-focus";

export function PaneTheme({ children }: { children: ReactNode }) {
  const held = useKeptFocus<HTMLDivElement>();
  return (
    <div ref={held} className="pane-theme">
      {children}
    </div>
  );
}
