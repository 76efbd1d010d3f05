/**
 * Formulas whose figure is worked out by hand while they are made, in doubles: with brackets, spaces,
 * line breaks, sheets and headings of any name. Each stands in a row of the table Lots.
 */
import fc from "fast-check";
import { Tape } from "./tape";

/** Sheets with figures in A1:C3; most of the names need quotation marks. */
export const sheets = [
  "Log",
  "Oil book",
  "TRUE",
  "1st",
  "A1",
  "R1C1",
  "it's",
  "Ünit",
  "Проба",
  "日本",
];
/** What stands in a sheet's cell; rows and columns from 0. */
export const figureAt = (sheet: number, row: number, column: number): number =>
  sheet + 1 + row * 0.5 + column * 0.125;

export const headings = ["Lot #", "% FFA", "it's", "me@home", "a, b: (c)", "Öl"];
/** What stands in the table, in the row of the formula. */
export const lotFigure = (row: number, column: number): number => (row % 7) + 1 + column * 0.25;

export const names: readonly (readonly [string, number])[] = [
  ["rate", 0.765],
  ["мера", 4.5],
  ["_x.y", -2],
];

interface Valued {
  readonly text: string;
  readonly value: number;
  readonly strength: number;
}

const gaps = ["", "", "", " ", "\n", "  "];
const gap = (tape: Tape): string => tape.pick(gaps);
const whole = (text: string, value: number): Valued => ({ text, value, strength: 9 });
const bracketed = (tape: Tape, { text, value }: Valued): Valued =>
  whole(`(${gap(tape)}${text}${gap(tape)})`, value);
const held = (tape: Tape, piece: Valued, least: number): Valued =>
  piece.strength < least || tape.oneIn(4) ? bracketed(tape, piece) : piece;
const call = (tape: Tape, name: string, given: readonly string[]): string =>
  `${name}(${given.map((each) => gap(tape) + each + gap(tape)).join(",")})`;
const sum = (values: readonly number[]): number => values.reduce((all, each) => all + each, 0);

const prefixOf = (sheet: string): string =>
  /^[A-Z][a-z]+$/.test(sheet) ? `${sheet}!` : `'${sheet.replaceAll("'", "''")}'!`;

interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}
const cellText = (row: number, column: number, dollar = ""): string =>
  `${dollar}${"ABC"[column] ?? ""}${dollar}${String(row + 1)}`;

function area(tape: Tape): Area {
  const [top, left] = [tape.next(3), tape.next(3)];
  return { top, left, bottom: top + tape.next(3 - top), right: left + tape.next(3 - left) };
}
const areaText = (tape: Tape, prefix: string, { top, left, bottom, right }: Area): string => {
  const dollar = tape.pick(["", "", "$"]);
  return `${prefix}${cellText(top, left, dollar)}:${cellText(bottom, right)}`;
};
function figuresIn(sheet: number, { top, left, bottom, right }: Area): number[] {
  const found: number[] = [];
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) found.push(figureAt(sheet, row, column));
  return found;
}

/** Something that SUM takes, and the figures in it. */
function many(tape: Tape): { text: string; figures: readonly number[] } {
  const sheet = tape.next(sheets.length);
  const prefix = prefixOf(sheets[sheet] ?? "");
  const [one, other] = [area(tape), area(tape)];
  const first = { text: areaText(tape, prefix, one), figures: figuresIn(sheet, one) };
  const second = areaText(tape, prefix, other);
  switch (tape.next(5)) {
    case 1:
      return {
        text: `(${gap(tape)}${first.text}${gap(tape)},${gap(tape)}${second}${gap(tape)})`,
        figures: [...first.figures, ...figuresIn(sheet, other)],
      };
    case 2: {
      // A block that holds the corner of the first one, so that they share something.
      const all = { top: 0, left: 0, bottom: one.top, right: one.left };
      const shared = { ...one, bottom: one.top, right: one.left };
      const sign = tape.pick([" ", "  ", "\n"]);
      return {
        text: `${first.text}${sign}${areaText(tape, prefix, all)}`,
        figures: figuresIn(sheet, shared),
      };
    }
    case 3:
      return { text: `{1,2.5;-3, 4}`, figures: [1, 2.5, -3, 4] };
    case 4:
      return { ...first, text: `(${gap(tape)}${first.text})` };
    default:
      return first;
  }
}

const escaped = (heading: string): string => heading.replace(/['#[\]@]/g, "'$&");

function leaf(tape: Tape, row: number): Valued {
  switch (tape.next(6)) {
    case 0: {
      const text = tape.pick(["1", "2.50", ".5", "1E2", "56.1"]);
      return whole(text, Number(text));
    }
    case 1:
    case 2: {
      const [sheet, down, across] = [tape.next(sheets.length), tape.next(3), tape.next(3)];
      const text = prefixOf(sheets[sheet] ?? "") + cellText(down, across, tape.pick(["", "$"]));
      return whole(text, figureAt(sheet, down, across));
    }
    case 3: {
      const column = tape.next(headings.length);
      return whole(`Lots[@[${escaped(headings[column] ?? "")}]]`, lotFigure(row, column));
    }
    case 4: {
      const text = tape.pick(["", 'say "no"', "TITRE.DOSE(", "two\nlines", "<&>", "[@Lot]", "Öl"]);
      return whole(call(tape, "LEN", [`"${text.replaceAll('"', '""')}"`]), text.length);
    }
    default: {
      const [name, value] = tape.pick(names);
      return whole(name, value);
    }
  }
}

function spread(figures: readonly number[]): number {
  const mean = sum(figures) / figures.length;
  return sum(figures.map((each) => (each - mean) ** 2)) / figures.length;
}

function called(tape: Tape, row: number, depth: number): Valued {
  const [a, b] = [expression(tape, row, depth - 1), expression(tape, row, depth - 1)];
  const some = many(tape);
  switch (tape.next(9)) {
    case 0:
      return whole(call(tape, "SUM", [some.text, a.text]), sum([...some.figures, a.value]));
    case 1:
      return whole(call(tape, "MAX", [a.text, b.text]), Math.max(a.value, b.value));
    case 2:
      return whole(call(tape, "ABS", [a.text]), Math.abs(a.value));
    case 3: {
      const test = tape.pick(["TRUE", "FALSE", "1<2", "( 2 )<=1", '"a"<>"b"']);
      const isTrue = test === "TRUE" || test === "1<2" || test.startsWith('"');
      return whole(call(tape, "IF", [test, a.text, b.text]), isTrue ? a.value : b.value);
    }
    case 4:
      return whole(call(tape, "IF", ["TRUE", "", b.text]), 0);
    case 5:
      return whole(call(tape, "IFNA", [a.text, b.text]), a.value);
    case 6:
      return whole(call(tape, "VAR.P", [some.text]), spread(some.figures));
    case 7:
      return whole(call(tape, "BITAND", ["13", "( 7 )"]), 5);
    default: {
      const text = call(tape, "IF", ["1=1", a.text, 'TITRE.CATALYST(1,2,"KOH",90,0.7)']);
      return whole(text, a.value);
    }
  }
}

/** NaN where a spreadsheet has an error, whatever is done with it, or where the digits left may differ. */
function worked(sign: "+" | "-" | "*" | "/" | "^", left: number, right: number): number {
  const value = {
    "+": left + right,
    "-": left - right,
    "*": left * right,
    "/": left / right,
    "^": left ** right,
  }[sign];
  const isSum = sign === "+" || sign === "-";
  const isNear = isSum && value !== 0 && Math.abs(value) < 1e-6 * Math.abs(left);
  return isNear || !Number.isFinite(value) ? NaN : value;
}

function expression(tape: Tape, row: number, depth: number): Valued {
  if (depth <= 0) return leaf(tape, row);
  switch (tape.next(8)) {
    case 0:
      return leaf(tape, row);
    case 1:
    case 2:
    case 3:
      return held(tape, called(tape, row, depth), 0);
    case 4: {
      const of = held(tape, expression(tape, row, depth - 1), 6);
      return { text: `-${tape.pick(["", " "])}${of.text}`, value: -of.value, strength: 6 };
    }
    case 5: {
      const of = held(tape, expression(tape, row, depth - 1), 5);
      return { text: `${of.text}%`, value: of.value / 100, strength: 5 };
    }
    default: {
      const sign = tape.pick(["+", "-", "*", "/", "^"] as const);
      const strength = { "+": 2, "-": 2, "*": 3, "/": 3, "^": 4 }[sign];
      const left = held(tape, expression(tape, row, depth - 1), strength);
      const right =
        sign === "^" ? whole("2", 2) : held(tape, expression(tape, row, depth - 1), strength + 1);
      const value = worked(sign, left.value, right.value);
      return { text: left.text + gap(tape) + sign + gap(tape) + right.text, value, strength };
    }
  }
}

export interface Told {
  readonly formula: string;
  readonly value: number;
}

/** A formula for a row of the table. Errors and differences of near figures are left out. */
export const toldFormula = (row: number): fc.Arbitrary<Told> =>
  fc
    .array(fc.nat({ max: 719 }), { minLength: 20, maxLength: 120, size: "max" })
    .map((figures) => {
      const tape = new Tape(figures);
      const { text, value } = expression(tape, row, 1 + tape.next(4));
      return { formula: `=${gap(tape)}${text}${gap(tape)}`, value };
    })
    .filter(({ value }) => value === 0 || (Math.abs(value) > 1e-6 && Math.abs(value) < 1e9));
