/** Cells, blocks, lines, names and parts of tables, on sheets of any name. */
import { leaf, type Piece } from "./piece";
import { structured } from "./structured";
import type { Tape } from "./tape";

/** Typed, and as a file must hold it where that is more careful. */
const sheets: readonly (readonly [shown: string, stored?: string])[] = [
  [""],
  ["Log!"],
  ["_lots2!"],
  ["'Log book'!"],
  ["'TRUE'!"],
  ["'false'!"],
  ["'1st'!"],
  ["'A1'!"],
  ["'xfd7'!"],
  ["'R1C1'!"],
  ["'RC'!"],
  ["'r'!"],
  ["'2026'!"],
  ["'it''s'!"],
  ["'''q'''!"],
  ["'Ünit'!"],
  ["'Проба'!"],
  ["'日本'!"],
  ["'a-b'!"],
  ["'a & <b>'!"],
  ["'say \"no\"'!"],
  ["'a,b(c'!"],
  ["'x!y'!"],
  ["'#N/A'!"],
  ["'{1}'!"],
  ["Jan:Dec!"],
  ["'Jan 1:Dec 31'!"],
  ["'TRUE:A1'!"],
  ["[1]Log!"],
  ["'[1]Log book'!"],
  // Without the quotation marks they need: people type it so, and a file must have them.
  ["TRUE!", "'TRUE'!"],
  ["false!", "'false'!"],
  ["A1!", "'A1'!"],
  ["R1C1!", "'R1C1'!"],
  ["1st!", "'1st'!"],
  ["2026!", "'2026'!"],
  ["Ünit!", "'Ünit'!"],
  ["Проба!", "'Проба'!"],
  ["a.b!", "'a.b'!"],
];

export function onSheet(tape: Tape, cells: string): Piece {
  const [shown, stored = shown] = tape.oneIn(2) ? tape.pick(sheets) : ["" as string];
  return leaf(shown + cells, {
    stored: stored + cells,
    tree: `<${shown}${cells}>`,
    back: `<${stored}${cells}>`,
    refers: true,
  });
}

const cells = ["A1", "$B$2", "c$3", "$D4", "XFD1048576", "TRU1", "R1", "LOG10"];
const blocks = ["A1:B2", "$A$1:B$2", "A:A", "$B:C", "1:3", "$2:$9"];
const names = ["rate", "blank_mL", "_x", "Ünit_1", "a.b", "x\\y", "TRUEish", "Проба", "LOG10x"];

export function reference(tape: Tape): Piece {
  switch (tape.next(5)) {
    case 0:
      return onSheet(tape, tape.pick(cells));
    case 1:
      return onSheet(tape, tape.pick(blocks));
    case 2:
      return structured(tape);
    case 3: {
      const name = onSheet(tape, tape.pick(names));
      // A range of sheets has no name of its own.
      return name.shown.replace(/^'(?:[^']|'')*'/, "").includes(":") || /^'.*:.*'!/.test(name.shown)
        ? leaf("rate", { tree: "<rate>", refers: true })
        : name;
    }
    default:
      return onSheet(tape, tape.pick(cells));
  }
}
