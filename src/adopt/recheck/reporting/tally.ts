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
  acidDose: "lye for the acid",
  reactionDose: "lye for the reaction",
  catalystRate: "dose",
  catalyst: "dose",
};

export class Tally {
  readonly checked: Record<Kind, number> = {
    titre: 0,
    "acid value": 0,
    "% FFA": 0,
    "mass of oil": 0,
    "lye for the acid": 0,
    "lye for the reaction": 0,
    dose: 0,
  };
  cutShort = 0;

  /** Of any dose, and of the parts of one. */
  get doses(): number {
    const { checked } = this;
    return checked.dose + checked["lye for the acid"] + checked["lye for the reaction"];
  }

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
