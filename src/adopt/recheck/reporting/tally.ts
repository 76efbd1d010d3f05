/** What was checked, counted by kind. */
import type { RoleId } from "../../recognising/roles";
import type { CheckedFigure } from "../judging/checked";
import type { Kind } from "./finding";

const kinds: Readonly<Partial<Record<RoleId, Kind>>> = {
  meanTitre: "titre",
  correctedTitre: "titre",
  acidValue: "acid value",
  ffa: "% FFA",
  oilMass: "mass of oil",
  acidDose: "dose",
  reactionDose: "dose",
  catalystRate: "dose",
  catalyst: "dose",
};

export class Tally {
  readonly checked: Record<Kind, number> = {
    titre: 0,
    "acid value": 0,
    "% FFA": 0,
    "mass of oil": 0,
    dose: 0,
  };
  cutShort = 0;

  /** Figures of a column that turned out not to be checked. */
  takeBack(role: RoleId, figures: number): void {
    const kind = kinds[role];
    if (kind) this.checked[kind] -= figures;
  }

  add(figures: readonly CheckedFigure[]): void {
    for (const { figure, verdict } of figures) {
      const kind = kinds[figure.role];
      if (!kind || verdict.kind === "not-checked") continue;
      this.checked[kind] += 1;
      if (verdict.kind === "wrong" && verdict.isCutShort) this.cutShort += 1;
    }
  }
}
