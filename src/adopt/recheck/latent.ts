/** Formulas that show a mistake which the figures do not show yet: every cell happens to be filled in. */
import { cellName } from "../../sheet/cell-name";
import { columnOf, type LogbookMapping } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import type { CheckedFigure, CheckedRow } from "./check-row";
import type { Latent } from "./finding";
import { shows } from "./formula-facts";
import type { MistakeId } from "./mistakes";

const possible: Partial<Record<RoleId, readonly MistakeId[]>> = {
  meanTitre: ["empty-as-zero"],
  correctedTitre: ["empty-as-zero", "blank-not-subtracted"],
  acidDose: ["acid-by-charge"],
};

export interface LatentFinder {
  look(row: CheckedRow): void;
  found(): Latent[];
}

export function latentIn(mapping: LogbookMapping): LatentFinder {
  const byKey = new Map<string, Latent>();
  const hasBlank = columnOf(mapping, "blank") !== undefined;
  const sleeping = ({ figure, facts, verdict }: CheckedFigure): MistakeId[] => {
    if (!facts || facts.callsUs || verdict.kind !== "right") return [];
    return (possible[figure.role] ?? []).filter(
      (id) => shows(id, facts) && (id !== "blank-not-subtracted" || hasBlank),
    );
  };
  return {
    look({ readings, figures }) {
      for (const each of figures) {
        for (const mistake of sleeping(each)) {
          const { column, formula, role } = each.figure;
          const key = `${String(column)} ${mistake}`;
          const before = byKey.get(key);
          byKey.set(
            key,
            before
              ? { ...before, rows: before.rows + 1 }
              : {
                  sheet: mapping.sheet,
                  column,
                  heading: columnOf(mapping, role)?.heading ?? "",
                  mistake,
                  formula,
                  address: cellName(readings.row, column),
                  rows: 1,
                },
          );
        }
      }
    },
    found: () => [...byKey.values()],
  };
}
