/** Where each figure of the sheet stands, so that its formulas can name the others. */
export interface Places {
  readonly firstLot: number;
  readonly mix: number;
  readonly amount: number;
  readonly temperature: number;
  readonly oil: number;
  readonly base: number;
  readonly assay: number;
  readonly charge: number;
  readonly ratio: number;
  readonly limit: number;
  /** The first of the amounts to weigh. */
  readonly weigh: number;
}

/** The batch's day, under the title. */
export const dayRow = 2;

/** An empty row and the headings of the lots. */
const headingsBetween = 2;

/**
 * Rows counted from 1, as formulas do. Amounts to weigh come first: they are what one looks for.
 * @param linesBelow lines of words right below them
 */
export function placesOf(lots: number, linesBelow: number, hasTarget: boolean): Places {
  const weigh = 6;
  const firstLot = weigh + lots + 2 + linesBelow + headingsBetween;
  const mix = firstLot + lots;
  const from = mix + (hasTarget ? 3 : 2);
  return {
    weigh,
    firstLot,
    mix,
    amount: from,
    temperature: from + 1,
    oil: from + 2,
    base: from + 3,
    assay: from + 4,
    charge: from + 5,
    ratio: from + 6,
    limit: from + 7,
  };
}

/** The column of figures. */
export const at = (row: number): string => `$C$${String(row)}`;
