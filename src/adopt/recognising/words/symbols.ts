/** Letters that stand for a quantity: what each may be, beside other words and alone. Common practice, no source. */
import type { Concept } from "./terms";

export type Meant = Concept | "molar" | "perLitre";

/** A single letter among other words: "N of titrant". */
export const letters: Readonly<Record<string, readonly Meant[]>> = {
  n: ["id", "molar"],
  m: ["molar", "mass"],
  c: ["molar"],
  v: ["titre", "volume"],
  t: ["titre", "temperature"],
  b: ["blank", "batch"],
  w: ["mass"],
  av: ["acidValue", "mean"],
  acidvalue: ["acidValue"],
  perlitre: ["perLitre"],
  insolution: ["solution"],
};

/** A heading that is nothing else, in lower case without spaces and points: V0, dV, "V - V0". */
export const symbols: Readonly<Record<string, readonly Meant[]>> = {
  v0: ["blank"],
  b0: ["blank"],
  t0: ["blank"],
  vb: ["blank"],
  vo: ["blank"],
  vblank: ["blank"],
  dv: ["net"],
  δv: ["net"],
  "∆v": ["net"],
  "v-v0": ["net"],
  "v-vb": ["net"],
  "v1-v0": ["net"],
  vnet: ["net"],
  vcorr: ["net"],
  vc: ["net"],
  ρ: ["density"],
  θ: ["temperature"],
  "%ffa": ["ffa"],
  x̄: ["mean"],
  ø: ["mean"],
  "⌀": ["mean"],
  σ: ["total"],
  "∑": ["total"],
};
