/** The time of a day, and the day of a week. */
import { lastDay } from "../../../core/reference/limits";
import { ofValues, type Standard } from "./adapter";
import { number, numbers } from "./convert";
import { doubt } from "./doubt";
import { type Cell, Fault } from "./value";

const daySeconds = 86_400;
const firstAgreed = 61;

/** What doubles leave of a second. */
const lastDigits = 2e-6;

/** A part of the time of day. What is left of a second, programs cut off or round. */
const ofTime = (part: (seconds: number) => number): Standard =>
  ofValues(1, 1, (cell = null) => {
    const serial = number(cell);
    if (serial < 0) {
      doubt();
      throw new Fault("#NUM!");
    }
    const exact = (serial - Math.floor(serial)) * daySeconds;
    const near = Math.round(exact);
    const cut = Math.abs(exact - near) < lastDigits ? near : Math.floor(exact);
    if (near >= daySeconds || part(near) !== part(cut)) doubt();
    return part(near % daySeconds);
  });

function time(...cells: readonly Cell[]): number {
  const given = numbers(cells);
  // a part of an hour is cut off by some, and counts as minutes to others
  if (given.some((each) => !Number.isInteger(each))) doubt();
  const [hours = 0, minutes = 0, seconds = 0] = given.map(Math.trunc);
  if ([hours, minutes, seconds].some((each) => each < 0 || each > 32_767)) doubt();
  const all = hours * 3600 + minutes * 60 + seconds;
  if (all < 0) throw new Fault("#NUM!");
  if (all >= daySeconds) doubt();
  return (all % daySeconds) / daySeconds;
}

/** 0 for Monday, from a serial. */
const fromMonday = (serial: number): number => (((serial - 2) % 7) + 7) % 7;

function weekday(cell: Cell, kind: Cell | undefined): number {
  const [given = 0, second = 1] = numbers(kind === undefined ? [cell] : [cell, kind]);
  const serial = Math.floor(given);
  if (serial < firstAgreed || serial > lastDay) doubt();
  if (serial < 0) throw new Fault("#NUM!");
  const way = Math.trunc(second);
  const day = fromMonday(serial);
  if (way === 1) return ((day + 1) % 7) + 1;
  if (way === 2) return day + 1;
  if (way === 3) return day;
  // from 11 on: the week begins on Monday, on Tuesday ...
  if (way >= 11 && way <= 17) return ((day - (way - 11) + 7) % 7) + 1;
  doubt();
  throw new Fault("#NUM!");
}

export const times: Readonly<Record<string, Standard>> = {
  TIME: ofValues(3, 3, (hours = null, minutes = null, seconds = null) =>
    time(hours, minutes, seconds),
  ),
  HOUR: ofTime((seconds) => Math.floor(seconds / 3600)),
  MINUTE: ofTime((seconds) => Math.floor(seconds / 60) % 60),
  SECOND: ofTime((seconds) => seconds % 60),
  WEEKDAY: ofValues(1, 2, (cell = null, kind) => weekday(cell, kind)),
};
