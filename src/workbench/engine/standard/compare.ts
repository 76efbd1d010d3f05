/** Which of two values comes first, and when two figures are one. */
import { doubt } from "./doubt";
import { type Cell, Fault } from "./value";

/** To 15 digits, which is what a person sees of it. */
export const seen = (figure: number): number => Number(figure.toPrecision(15));

const near = 2 ** -48;

/** So close that the difference is what doubles make of decimals. */
export function isClose(a: number, b: number): boolean {
  if (a === b) return true;
  const apart = Math.abs(a - b);
  if (a === 0 || b === 0 || !Number.isFinite(apart)) return false;
  if (Number.isSafeInteger(a) && Number.isSafeInteger(b)) return false;
  return apart < Math.abs(a) * near && apart < Math.abs(b) * near;
}

const collator = new Intl.Collator("en", { sensitivity: "accent" });
const letters = /^[\p{L}\p{N} ]*$/u;

function compareTexts(a: string, b: string): number {
  const order = collator.compare(a, b);
  if (a.toLowerCase() === b.toLowerCase()) return 0;
  // equal or not they agree on; on the order of marks they do not
  if (!letters.test(a) || !letters.test(b)) doubtOrder();
  return order === 0 ? -1 : order;
}

let isOrderAsked = false;
const doubtOrder = (): void => {
  if (isOrderAsked) doubt();
};

const emptyLike = (cell: Cell): Cell => {
  if (typeof cell === "string") return "";
  return typeof cell === "boolean" ? false : 0;
};

/** Below 0, 0, above 0. Figures come before texts. */
export function compare(left: Cell, right: Cell, order = true): number {
  const a = left ?? emptyLike(right);
  const b = right ?? emptyLike(left);
  if (a instanceof Fault) throw a;
  if (b instanceof Fault) throw b;
  isOrderAsked = order;
  if (typeof a === "string" && typeof b === "string") return compareTexts(a, b);
  if (typeof a !== typeof b && (typeof a === "boolean" || typeof b === "boolean")) doubt();
  if (typeof a === "string") return 1;
  if (typeof b === "string") return -1;
  const [x, y] = [Number(a), Number(b)];
  return isClose(x, y) ? 0 : x - y;
}
