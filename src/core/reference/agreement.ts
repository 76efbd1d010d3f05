import { exact } from "../exact/exact";

/** Readings farther apart than three drops of 0.05 mL, or three steps, do not agree (common practice, no source). */
export const threeDrops = exact("0.15");
export const threeSteps = 3;
