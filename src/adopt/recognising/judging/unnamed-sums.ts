/** Columns of which no word is known, told together: three that add up, oil and the methanol for it. */
import type { RoleId } from "../roles";
import { each, isAlike, isVaried, ratioOf } from "./figures";
import type { KnownTable, Unnamed } from "./known-table";

type Told = ReadonlyMap<number, RoleId>;
const nothing: Told = new Map();
const near = 0.015;

const told = (...all: readonly (readonly [Unnamed, RoleId])[]): Told =>
  new Map(
    all.map(
      ([
        {
          candidate: { column },
        },
        role,
      ]) => [column, role],
    ),
  );

/** What only one set of columns can be. */
const onlyOne = (found: readonly Told[]): Told =>
  found.length === 1 ? (found[0] ?? nothing) : nothing;

/** One part in one ratio to the oil, another, and their sum. */
export function threeThatAddUp(left: readonly Unnamed[], t: KnownTable): Told {
  const oil = t.of("oilAmount") ?? t.of("oilMass");
  if (!oil || !isVaried(oil)) return nothing;
  if (t.has("catalyst") || t.has("reactionDose") || t.has("acidDose")) return nothing;
  const varied = left.filter(({ own }) => isVaried(own));
  const found = varied
    .filter(({ own }) => ratioOf(own, oil, near) !== undefined)
    .flatMap((reaction) =>
      varied.flatMap((acid) =>
        varied.flatMap((all) => {
          if (new Set([reaction, acid, all]).size < 3) return [];
          if (ratioOf(acid.own, oil, near) !== undefined) return [];
          const sum = each(reaction.own, acid.own, (a, b) => (b > 0 ? a + b : NaN));
          return isAlike(all.own, sum, 0.006, 1)
            ? [told([reaction, "reactionDose"], [acid, "acidDose"], [all, "catalyst"])]
            : [];
        }),
      ),
    );
  return onlyOne(found);
}

/** A fifth of the oil or so, the same share in each row. */
export function oilAndMethanol(left: readonly Unnamed[], t: KnownTable): Told {
  const doses = t.has("catalyst") || t.has("baseCharge") || t.has("assay") || t.has("litresMade");
  if (!doses || t.has("oilAmount") || t.has("oilMass") || t.has("methanol")) return nothing;
  const varied = left.filter(({ own }) => isVaried(own));
  const found = varied.flatMap((oil) =>
    varied.flatMap((methanol) => {
      const ratio = ratioOf(methanol.own, oil.own, near);
      return ratio !== undefined && ratio >= 0.15 && ratio <= 0.35
        ? [told([oil, "oilAmount"], [methanol, "methanol"])]
        : [];
    }),
  );
  return onlyOne(found);
}
