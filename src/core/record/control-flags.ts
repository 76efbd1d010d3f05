/** What a control chart says of each value: the rules of Nelson, J. Qual. Tech. 16 (1984) 237. */
import { slack } from "../exact/compare";
import { computed, type Exact } from "../exact/exact";
import { action, type ControlChart } from "./control-chart";

export const flags = {
  beyond: "beyond limits",
  side: "nine on one side",
  rising: "six rising",
  falling: "six falling",
  none: "in control",
} as const;

export type Flag = (typeof flags)[keyof typeof flags];

/** So many in a row on one side of the centre, and so many each above (or below) the one before. */
export const onOneSide = 9;
export const inOneDirection = 6;

/** Above: 1, below: -1, level: 0. */
const direction = (value: Exact, from: Exact): number => value.comparedTo(from);

/** Is a distance beyond so many sigmas, with the slack every limit allows? */
export const isBeyond = (distance: Exact, limit: number): boolean =>
  distance.abs().gt(computed(limit * (1 + slack.toNumber())));

/**
 * One flag for each value, the first rule that holds: beyond three sigmas; the ninth in a row, or a
 * later one, on one side of the centre; the sixth in a row, or a later one, that rises or falls.
 */
export function controlFlags({ values, centre, sigma }: ControlChart): Flag[] {
  let side = 0;
  let sideRun = 0;
  let trend = 0;
  let trendRun = 1;
  return values.map((value, place) => {
    const off = value.minus(centre);
    const nowSide = direction(value, centre);
    sideRun = nowSide !== 0 && nowSide === side ? sideRun + 1 : Math.abs(nowSide);
    side = nowSide;
    const before = values[place - 1];
    const nowTrend = before === undefined ? 0 : direction(value, before);
    if (nowTrend === 0) trendRun = 1;
    else trendRun = nowTrend === trend ? trendRun + 1 : 2;
    trend = nowTrend;
    if (isBeyond(off, action * sigma)) return flags.beyond;
    if (sideRun >= onOneSide) return flags.side;
    if (trendRun < inOneDirection) return flags.none;
    return trend > 0 ? flags.rising : flags.falling;
  });
}
