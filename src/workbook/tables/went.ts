/** The columns of `Batches` that say how a batch went: typed after it, none of them needed for a dose. */

const went = {
  weighed: "Weighed g",
  methanol: "Methanol used L",
  oil: "Oil used kg",
  litres: "Litres made",
  minutes: "Minutes to settle",
  washes: "Washes",
  trial: "3 in 27",
  seen: "Seen",
} as const;

export const wentHeadings: readonly string[] = Object.values(went);
