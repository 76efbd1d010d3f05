/** What follows from what was just typed or picked: a listener hears it when it changes. */
import type { ReactNode } from "react";

/** It stands there from the start, empty: what appears together with its words is not spoken. */
export const Spoken = ({ children }: { children: ReactNode }) => (
  <div role="status">{children}</div>
);
