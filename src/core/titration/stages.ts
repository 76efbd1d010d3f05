/** What had been done to the oil before this sample was taken: as a row holds it, and as it is offered. */
export const stages = {
  "as received": "As received",
  dried: "Dried",
  "after acid step": "After acid step",
  blend: "Blend",
} as const;

export type Stage = keyof typeof stages;
export const stageNames = Object.keys(stages) as Stage[];
