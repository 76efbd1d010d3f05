/**
 * The look of the pane: theme.css has the colours, theme-tokens.css hands them to Fluent's parts,
 * print.css says what goes on paper.
 */
import "./theme.css";
import "./theme-tokens.css";
import "./print.css";
import type { ReactNode } from "react";

export const PaneTheme = ({ children }: { children: ReactNode }) => (
  <div className="pane-theme">{children}</div>
);
