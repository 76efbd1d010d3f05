import type { RoleId } from "../../recognising/roles";
import type { Written } from "../arithmetic/expected-figure";

/** A right figure that stands before another in its row. */
export interface RightFigure {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly written: Written;
  readonly value: number;
  readonly halfDigit: number;
}
