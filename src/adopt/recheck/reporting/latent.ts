/** Formulas that show a mistake which the figures do not show yet: every cell happens to be filled in. */
import { cellName } from "../../../sheet/cell-name";
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import type { CheckedFigure, CheckedRow } from "../judging/checked";
import type { Latent } from "./finding";
import { type MistakeId, mistakes } from "../mistakes/all";
import { shows } from "../judging/slips";

/** Mistakes that a formula of a role may show before a figure is wrong. */
const asleepIn = (role: RoleId): MistakeId[] =>
  mistakes.flatMap(({ id, sleepsIn = [] }) => (sleepsIn.includes(role) ? [id] : []));

export interface LatentFinder {
  look(row: CheckedRow): void;
  found(): Latent[];
}

export function latentIn(mapping: LogbookMapping): LatentFinder {
  const byKey = new Map<string, Latent>();
  const hasBlank = columnOf(mapping, "blank") !== undefined;
  const sleeping = ({ figure, facts, verdict }: CheckedFigure): MistakeId[] => {
    if (!facts || facts.callsUs || verdict.kind !== "right") return [];
    return asleepIn(figure.role).filter(
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
