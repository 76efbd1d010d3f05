/**
 * Conventional atomic weights, g/mol, kept as the digits printed (source: ciaaw). Every molar mass
 * in the product is derived from these; none is typed a second time.
 */
export const atomicWeights = {
  H: "1.008",
  C: "12.011",
  O: "15.999",
  S: "32.06",
  Na: "22.98976928",
  K: "39.0983",
} as const;

export type Element = keyof typeof atomicWeights;
