/** The kinds of oil that are known by name, and one that is not. */
import { oils } from "../../core/reference/oils";
import { capital } from "../widgets/shown-number";

export const oilChoices: readonly (readonly [string, string])[] = [
  ...oils.map(({ name }) => [name, capital(name)] as const),
  ["", "Another oil"],
];
