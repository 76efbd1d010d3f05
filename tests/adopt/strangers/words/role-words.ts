/** How headings are written in one language: by what they mean, parted by `|`. `#` is a replicate's number. */
import type { RoleId } from "../../../../src/adopt/recognising/roles";

/**
 * What a heading means to a maker: a role of the product, or one of the things that stand in logbooks
 * and are no role, which a colleague leaves alone.
 */
export type Meaning =
  RoleId | "rough" | "target" | "price" | "time" | "colour" | "glycerol" | "soap" | "running total";

/** The unit's spelling beside a heading, by the unit. */
export type UnitWords = Readonly<Record<string, string>>;

export interface Language {
  readonly name: string;
  readonly headings: Readonly<Partial<Record<Meaning, string>>>;
  readonly units: UnitWords;
  readonly commas: boolean;
}
