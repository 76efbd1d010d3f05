/**
 * Critical values of Dixon's r10, two-sided, n = 3 to 10: the exact integral (McBane, Journal of
 * Statistical Software 16(3), 2006) to four decimals. The values commonly printed (Rorabacher,
 * Analytical Chemistry 63 (1991) 139) differ from n = 4 on by up to 0.006, and their 0.926 at n = 4,
 * 99 % is a known slip for 0.921.
 */
export interface DixonCritical {
  readonly at90: number;
  readonly at95: number;
  readonly at99: number;
}

// prettier-ignore
export const dixonCritical: ReadonlyMap<number, DixonCritical> = new Map([
  [3,  { at90: 0.9413, at95: 0.9702, at99: 0.9940 }],
  [4,  { at90: 0.7655, at95: 0.8298, at99: 0.9207 }],
  [5,  { at90: 0.6424, at95: 0.7102, at99: 0.8232 }],
  [6,  { at90: 0.5624, at95: 0.6275, at99: 0.7427 }],
  [7,  { at90: 0.5073, at95: 0.5690, at99: 0.6811 }],
  [8,  { at90: 0.4671, at95: 0.5256, at99: 0.6336 }],
  [9,  { at90: 0.4363, at95: 0.4922, at99: 0.5963 }],
  [10, { at90: 0.4119, at95: 0.4656, at99: 0.5661 }],
]);
