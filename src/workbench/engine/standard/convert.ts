/** What one kind of value becomes where another is wanted. */
import { millisecondsInDay, serialOf1970 } from "../../../sheet/serial-days";
import { doubt } from "./doubt";
import { type Cell, Fault } from "./value";

const plainFigure = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const day = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days as spreadsheets count them, from 1899-12-30. */
export const serialOf = (year: number, month: number, date: number): number => {
  const found = new Date(0);
  found.setUTCFullYear(year, month - 1, date);
  return Math.round(found.getTime() / millisecondsInDay) + serialOf1970;
};

function figureIn(text: string): number {
  const bare = text.trim();
  if (plainFigure.test(bare)) return Number(bare);
  const [, year, month, date] = day.exec(bare) ?? [];
  // programs agree on nothing else that might be a figure
  if (/\d/.test(bare) || /^(?:true|false)$/i.test(bare)) doubt();
  if (year === undefined) throw new Fault("#VALUE!");
  return serialOf(Number(year), Number(month), Number(date));
}

export function number(cell: Cell): number {
  if (typeof cell === "number") return cell;
  if (cell === null) return 0;
  if (typeof cell === "boolean") return cell ? 1 : 0;
  if (cell instanceof Fault) throw cell;
  return figureIn(cell);
}

/** Several figures. Which of two errors wins, programs do not agree on. */
export function numbers(cells: readonly Cell[]): number[] {
  const faults: Fault[] = [];
  const found = cells.map((cell) => {
    try {
      return number(cell);
    } catch (error) {
      if (!(error instanceof Fault)) throw error;
      faults.push(error);
      return 0;
    }
  });
  const [first] = faults;
  if (first && faults.some(({ sign }) => sign !== first.sign)) doubt();
  if (first) throw first;
  return found;
}

/** Where programs write an exponent, and with which digits, they do not agree. */
const isUsual = (figure: number): boolean =>
  figure === 0 || (Math.abs(figure) >= 1e-4 && Math.abs(figure) < 1e15);

function shownFigure(figure: number): string {
  if (!isUsual(figure)) doubt();
  const short = Number(figure.toPrecision(15));
  if (short === 0) return "0";
  return String(short);
}

const lastBits = 2 ** -51;

export function text(cell: Cell): string {
  if (typeof cell === "string") return cell;
  if (cell === null) return "";
  if (cell instanceof Fault) throw cell;
  if (typeof cell === "number") {
    // a last bit decides between two digits: programs that add up otherwise write the other one
    if (shownFigure(cell * (1 + lastBits)) !== shownFigure(cell * (1 - lastBits))) doubt();
    return shownFigure(cell);
  }
  doubt();
  return cell ? "TRUE" : "FALSE";
}

export function truth(cell: Cell): boolean {
  if (typeof cell === "boolean") return cell;
  if (typeof cell === "string") {
    if (/\d/.test(cell) || /^\s*(?:true|false)\s*$/i.test(cell)) doubt();
    throw new Fault("#VALUE!");
  }
  return number(cell) !== 0;
}
