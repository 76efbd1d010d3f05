/** The ways in which makers lay a logbook out. Those that begin with "odd" are the odd ones. */
import { headingLayouts } from "./heading-layouts";
import type { Layout } from "./plain-table";
import { rowLayouts } from "./row-layouts";
import { tidyLayouts } from "./tidy-layouts";

export const layouts: Readonly<Record<string, Layout>> = {
  ...tidyLayouts,
  ...headingLayouts,
  ...rowLayouts,
};
