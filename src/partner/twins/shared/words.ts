/** The words several functions take. */
import type { GramPerMole } from "../../../core/quantity/quantity";
import type { Base } from "../../../core/reference/bases";
import type { FattyAcid } from "../../../core/reference/fatty-acids";
import type { Reading } from "./reading";
import { type Word, wordOf } from "./word";

/** Spaces in the name of a base do not matter. */
export const baseOf = (reading: Reading): Word<Base> =>
  wordOf<Base>(reading, "base", { anywhere: true });

export const baseMass = (base: Word<Base>): string =>
  base.pick("base, g/mol", (each): GramPerMole => each.molarMass);

export const fattyAcidMass = (reading: Reading): string =>
  wordOf<FattyAcid>(reading, "fattyAcid").pick(
    "the acid the percentage is reported as, g/mol",
    (acid) => acid.reportedMass,
    true,
  );
