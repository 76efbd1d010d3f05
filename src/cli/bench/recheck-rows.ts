/** Titrations and batches worked out by hand: three in seven are wrong. */

export interface Worked {
  readonly lot: string;
  readonly titres: readonly [number, number];
  readonly acidValue: number;
  readonly ffa: number;
  readonly kilograms: number;
  /** g of KOH of 90 %, for the acid and 0.765 % of pure base. */
  readonly lye: number;
}

export const rounded = (value: number, places: number): number => Number(value.toFixed(places));

/** The blank forgotten, the assay forgotten, too much lye. */
export function workedRow(at: number): Worked {
  const titre = 2 + (at % 160) / 50;
  const wrong = at % 7;
  const net = titre + 0.02 - (wrong === 1 ? 0 : 0.15);
  const acidValue = (56.1 * 0.1 * net) / 7.05;
  const kilograms = 50 + ((at * 37) % 90);
  const pure = (kilograms * acidValue * 56.1053) / 56.1 + 10 * kilograms * 0.765;
  const lye = (pure / (wrong === 3 ? 1 : 0.9)) * (wrong === 5 ? 1.3 : 1);
  return {
    lot: `NQ-${String(at)}`,
    titres: [rounded(titre, 2), rounded(titre + 0.04, 2)],
    acidValue: rounded(acidValue, 2),
    ffa: rounded((acidValue * 282) / 561, 2),
    kilograms,
    lye: rounded(lye, 0),
  };
}
