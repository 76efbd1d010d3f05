/** The figures of a row that are worked out from its readings. */
import type { RoleId } from "../../recognising/roles";

/** In the order in which one is worked out from the other. */
export const figureRoles: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "oilMass",
  "reactionDose",
  "acidDose",
  "catalystRate",
  "catalyst",
];

/** Lye, or a part of it. */
export const doseRoles: readonly RoleId[] = figureRoles.slice(figureRoles.indexOf("reactionDose"));

/** All of them, and what was put on the balance in the end: all that a row may hold as a result. */
export const heldRoles: readonly RoleId[] = [...figureRoles, "weighed"];
