/** Parts of tables, in every form that ECMA-376 and people have. */
import { leaf, type Piece } from "./piece";
import type { Tape } from "./tape";

/** Headings of Log as people have them; what means something stands behind an apostrophe. */
const headings = [
  "Lot",
  "Titre 1",
  "% FFA",
  "Lot #",
  "it's",
  "a[b]c",
  "me@home",
  "a, b: (c)",
  'say "no"',
  "two\nlines",
  "Öl 油",
  "TRUE",
  "A1",
  "x!y",
  "#All",
];
const escaped = (heading: string): string => heading.replace(/['#[\]@]/g, "'$&");
const isPlainWord = (heading: string): boolean => /^[\p{L}\p{N}_]+$/u.test(heading);

/** What stands between the outer square brackets, and the same in the long form of files. */
function within(tape: Tape): readonly [shown: string, stored: string] {
  const heading = tape.pick(headings);
  const one = escaped(heading);
  const two = escaped(tape.pick(headings));
  const [left, right] = tape.oneIn(4) ? [" ", " "] : ["", ""];
  switch (tape.next(10)) {
    case 0:
      return [one, one];
    case 1:
      return isPlainWord(heading)
        ? [`@${one}`, `[#This Row],[${one}]`]
        : [`@[${one}]`, `[#This Row],[${one}]`];
    case 2:
      return [`@[${one}]:[${two}]`, `[#This Row],[${one}]:[${two}]`];
    case 3:
      return ["@", "#This Row"];
    case 4: {
      const section = tape.pick(["#All", "#Data", "#Headers", "#Totals", "#This Row"]);
      return [section, section];
    }
    case 5: {
      const text = `${left}[${one}]:[${two}]${right}`;
      return [text, text];
    }
    case 6: {
      const text = `${left}[#All],${left}[${one}]${right}`;
      return [text, text];
    }
    case 7: {
      const text = `[#Headers],[#Data],[${one}]`;
      return [text, text];
    }
    case 8: {
      const text = `[#This Row],[${one}]:[${two}]`;
      return [text, text];
    }
    default: {
      const text = `${left}[${one}]${right}`;
      return [text, text];
    }
  }
}

export function structured(tape: Tape): Piece {
  const table = tape.pick(["Log", "", "Öl_2", "Titrations"]);
  const isWhole = table !== "" && tape.oneIn(12);
  const [inside, long] = isWhole ? ["", ""] : within(tape);
  const shown = `${table}[${inside}]`;
  const stored = `${table || "Log"}[${long}]`;
  return leaf(shown, { stored, tree: `<${shown}>`, back: `<${stored}>`, refers: true });
}
