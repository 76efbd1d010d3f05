/** The look of the pane: theme.css has the colours, theme-tokens.css hands them to Fluent's parts. */
import "./theme.css";
import "./theme-tokens.css";
import type { ReactNode } from "react";

export const PaneTheme = ({ children }: { children: ReactNode }) => (
  <div className="pane-theme">{children}</div>
);
