/** How long the colour of an end point must stay: two standards, two answers. */
export interface EndPoint {
  readonly seconds: 15 | 30;
  /** The methods that ask for it. */
  readonly asked: string;
}

/** ISO 660 9.3.3, EN 14104 and AOCS Ca 5a-40 were read; ASTM D974 is commonly cited. */
export const endPoints: readonly EndPoint[] = [
  { seconds: 15, asked: "ISO 660, EN 14104, ASTM D974" },
  { seconds: 30, asked: "AOCS Ca 5a-40" },
];
