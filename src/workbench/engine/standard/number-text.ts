/** Figures written out as text, in the few formats that programs agree on to the letter. */
import { numfmt } from "@univerjs/core";
import { lastDay } from "../../../core/reference/limits";
import { ofValues, type Standard } from "./adapter";
import { rounded } from "./arithmetic";
import { number, numbers, text, truth } from "./convert";
import { doubt } from "./doubt";
import { type Cell, Fault } from "./value";

const grouped = (whole: string): string => whole.replace(/\B(?=(\d{3})+$)/g, ",");

/** @param isSettled programs agree on which way a half goes */
function fixed(figure: number, places: number, hasCommas: boolean, isSettled: boolean): string {
  const beyond = Math.abs(figure) * 10 ** places;
  const isHalf = Math.abs(beyond - Math.floor(beyond) - 0.5) < 1e-9 * Math.max(1, beyond);
  if (isHalf && !isSettled) doubt();
  if (places < 0 || places > 15 || Math.abs(figure) >= 1e15) doubt();
  const size = rounded(Math.abs(figure), places, (each) => Math.floor(each + 0.5));
  const [whole = "", decimals] = size.toFixed(Math.min(Math.max(places, 0), 15)).split(".");
  if (figure < 0 && size === 0) doubt();
  const sign = figure < 0 && size !== 0 ? "-" : "";
  return `${sign}${hasCommas ? grouped(whole) : whole}${decimals === undefined ? "" : `.${decimals}`}`;
}

const plainFormat = /^(#,##)?0(?:\.(0+))?(%)?$/;

function formatted(cell: Cell, format: Cell): string {
  const pattern = text(format);
  if (cell instanceof Fault) throw cell;
  if (typeof cell === "string" || typeof cell === "boolean") doubt();
  if (typeof cell === "string") return cell;
  const figure = number(cell);
  const [isPlain, commas, decimals = "", percent] = plainFormat.exec(pattern) ?? [];
  if (isPlain !== undefined) {
    const size = percent ? figure * 100 : figure;
    return `${fixed(size, decimals.length, commas !== undefined, percent === undefined)}${percent ?? ""}`;
  }
  if (pattern !== "yyyy-mm-dd" || figure < 61 || figure > lastDay) doubt();
  return numfmt.format(pattern, figure);
}

export const written: Readonly<Record<string, Standard>> = {
  TEXT: ofValues(2, 2, (cell = null, format = null) => formatted(cell, format)),
  FIXED: ofValues(1, 3, (cell = null, places, isBare = null) => {
    const [figure = 0, digits = 0] = numbers([cell, places === undefined ? 2 : places]);
    return fixed(figure, Math.trunc(digits), !truth(isBare), false);
  }),
};
