/** Days and their parts. Before March 1900 programs do not agree on what day it was. */
import { lastDay } from "../../../core/reference/limits";
import { timeOfSerial } from "../../../sheet/serial-days";
import { ofValues, type Standard } from "./adapter";
import { doubt } from "./doubt";
import { number, numbers, serialOf } from "./convert";
import { type Cell, Fault } from "./value";

const firstAgreed = 61;

function dayOf(cell: Cell): Date {
  const serial = Math.floor(number(cell));
  if (serial < firstAgreed || serial > lastDay) doubt();
  if (serial < 0 || serial > lastDay) throw new Fault("#NUM!");
  return new Date(timeOfSerial(serial));
}

function written(year: number, month: number, date: number): number {
  if (year < 1900 || year > 9999) doubt();
  const serial = serialOf(year, month, date);
  if (serial < firstAgreed || serial > lastDay) doubt();
  if (serial < 0) throw new Fault("#NUM!");
  return serial;
}

const whole = (cell: Cell): number => Math.trunc(number(cell));

const lastOfMonth = (year: number, month: number): number =>
  new Date(Date.UTC(year, month, 0)).getUTCDate();

/** So many months on; in a shorter month its last day. */
function later(start: Cell, months: Cell): number {
  const from = dayOf(start);
  const count = from.getUTCFullYear() * 12 + from.getUTCMonth() + whole(months);
  const [year, month] = [Math.floor(count / 12), (count % 12) + 1];
  return written(year, month, Math.min(from.getUTCDate(), lastOfMonth(year, month)));
}

function endOfMonth(start: Cell, months: Cell): number {
  const from = dayOf(start);
  const count = from.getUTCFullYear() * 12 + from.getUTCMonth() + whole(months);
  const [year, month] = [Math.floor(count / 12), (count % 12) + 1];
  return written(year, month, lastOfMonth(year, month));
}

const ofDay = (work: (day: Date) => number): Standard =>
  ofValues(1, 1, (cell = null) => work(dayOf(cell)));

export const days: Readonly<Record<string, Standard>> = {
  DATE: ofValues(3, 3, (year = null, month = null, date = null) =>
    written(whole(year), whole(month), whole(date)),
  ),
  YEAR: ofDay((day) => day.getUTCFullYear()),
  MONTH: ofDay((day) => day.getUTCMonth() + 1),
  DAY: ofDay((day) => day.getUTCDate()),
  EDATE: ofValues(2, 2, (start = null, months = null) => later(start, months)),
  EOMONTH: ofValues(2, 2, (start = null, months = null) => endOfMonth(start, months)),
  DAYS: ofValues(2, 2, (end = null, start = null) => {
    const [last = 0, first = 0] = numbers([end, start]);
    return last - first;
  }),
};
