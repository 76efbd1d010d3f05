/** Figures, texts, truth values, errors, and arrays of them. */
import { gap, leaf, type Piece } from "./piece";
import type { Tape } from "./tape";

const texts = [
  "",
  "KOH",
  'say "no"',
  '""',
  "(A1",
  "a,b;c}",
  "TITRE.DOSE(",
  "_xlfn.X(",
  "'",
  "[@Lot]",
  "<&>",
  "two\nlines",
  "a\tb",
  "Öl 油 🛢",
  "=1",
  "#REF!",
  " ",
];
const numbers = ["1", "0", "12", "2.50", ".5", "1E5", "1.5e-3", "1E+300", "56.1", "3."];
const errors = ["#N/A", "#REF!", "#VALUE!", "#DIV/0!", "#NUM!", "#NAME?", "#NULL!"];

export function constant(tape: Tape): Piece {
  switch (tape.next(4)) {
    case 0:
      return leaf(tape.pick(numbers));
    case 1: {
      const text = tape.pick(texts);
      return leaf(`"${text.replaceAll('"', '""')}"`, { tree: JSON.stringify(text) });
    }
    case 2:
      return tape.oneIn(2)
        ? leaf(tape.pick(["TRUE", "true"]), { tree: "true" })
        : leaf("FALSE", { tree: "false" });
    default: {
      const error = tape.pick(errors);
      return leaf(error, { refers: error === "#REF!" });
    }
  }
}

export function array(tape: Tape): Piece {
  const [rows, columns] = [1 + tape.next(3), 1 + tape.next(3)];
  const cells = Array.from({ length: rows }, () =>
    Array.from({ length: columns }, () => {
      const value = constant(tape);
      const isFigure = numbers.includes(value.shown);
      const text = isFigure && tape.oneIn(3) ? `-${value.shown}` : value.shown;
      return { text: gap(tape) + text + gap(tape), tree: isFigure ? text : value.tree };
    }),
  );
  const shown = `{${cells.map((row) => row.map(({ text }) => text).join(",")).join(";")}}`;
  const tree = `{${cells.map((row) => row.map((each) => each.tree).join("; ")).join(" | ")}}`;
  return leaf(shown, { tree });
}
