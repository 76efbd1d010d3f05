/** Text from text. Length is counted as programs do for letters of the first plane. */
import { ofValues, type Standard } from "./adapter";
import { doubt } from "./doubt";
import { number, text } from "./convert";
import { type Cell, Fault } from "./value";

/** Beyond it, programs count differently. */
const isUsual = (written: string): boolean => !/[\ud800-\udfff]/.test(written);

function counted(cell: Cell): string {
  const found = text(cell);
  if (!isUsual(found)) doubt();
  return found;
}

function howMany(cell: Cell | undefined, otherwise: number): number {
  if (cell === undefined) return otherwise;
  const count = Math.trunc(number(cell));
  if (count < 0) throw new Fault("#VALUE!");
  return count;
}

function part(cell: Cell, first: Cell, length: Cell): string {
  const written = counted(cell);
  const start = howMany(first, 1);
  const count = howMany(length, 0);
  if (start < 1) throw new Fault("#VALUE!");
  return written.slice(start - 1, start - 1 + count);
}

function substituted(cell: Cell, before: Cell, after: Cell, which?: Cell): string {
  const [written, old, put] = [text(cell), text(before), text(after)];
  const only = which === undefined ? undefined : howMany(which, 1);
  if (only !== undefined && only < 1) throw new Fault("#VALUE!");
  if (old === "") return written;
  const pieces = written.split(old);
  if (only === undefined) return pieces.join(put);
  if (only >= pieces.length) return written;
  return [pieces.slice(0, only).join(old), pieces.slice(only).join(old)].join(put);
}

function found(cell: Cell, within: Cell, from: Cell | undefined, fold: boolean): number {
  const [what, where] = [text(cell), counted(within)].map((each) =>
    fold ? each.toLowerCase() : each,
  ) as [string, string];
  const start = howMany(from, 1);
  if (start < 1 || start > where.length + 1) throw new Fault("#VALUE!");
  if (what === "" || (fold && /[*?~]/.test(what))) doubt();
  const place = where.indexOf(what, start - 1);
  if (place < 0) throw new Fault("#VALUE!");
  return place + 1;
}

/** What cannot be printed. */

const control = /[\u0000-\u001f]/g;

/** Which of an error and another fault wins, programs do not agree on. */
const ofSeveral = (...[least, most, work]: Parameters<typeof ofValues>): Standard =>
  ofValues(least, most, (...cells) => {
    if (cells.some((cell) => cell instanceof Fault)) doubt();
    return work(...cells);
  });

const ofText = (work: (written: string) => Cell): Standard =>
  ofValues(1, 1, (cell = null) => work(counted(cell)));

export const words: Readonly<Record<string, Standard>> = {
  VALUE: ofValues(1, 1, (cell = null) => {
    if (cell === null || typeof cell === "boolean") doubt();
    return number(cell);
  }),
  LEN: ofText((written) => written.length),
  TRIM: ofText((written) => written.replace(/ +/g, " ").replace(/^ | $/g, "")),
  CLEAN: ofText((written) => written.replace(control, "")),
  UPPER: ofText((written) => written.toUpperCase()),
  LOWER: ofText((written) => written.toLowerCase()),
  LEFT: ofSeveral(1, 2, (cell = null, count) => counted(cell).slice(0, howMany(count, 1))),
  RIGHT: ofSeveral(1, 2, (cell = null, count) => {
    const written = counted(cell);
    return written.slice(Math.max(0, written.length - howMany(count, 1)));
  }),
  MID: ofSeveral(3, 3, (cell = null, first = null, length = null) => part(cell, first, length)),
  SUBSTITUTE: ofSeveral(3, 4, (cell = null, before = null, after = null, which) =>
    substituted(cell, before, after, which),
  ),
  FIND: ofSeveral(2, 3, (cell = null, within = null, from) => found(cell, within, from, false)),
  SEARCH: ofSeveral(2, 3, (cell = null, within = null, from) => found(cell, within, from, true)),
  EXACT: ofSeveral(2, 2, (left = null, right = null) => text(left) === text(right)),
};
