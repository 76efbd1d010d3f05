/** How wide text is drawn, in the type that spreadsheets on every machine have a likeness of. */

/** Widths of the characters from the space to the tilde, in thousandths of the letters' size. */
const widths =
  "278 278 355 556 556 889 667 191 333 333 389 584 278 333 278 278 556 556 556 556 556 556 556 556 556 556 278 278 584 584 584 556 1015 667 667 722 722 667 611 778 722 278 500 667 556 833 722 778 667 778 722 667 611 722 667 944 667 667 611 278 278 278 469 556 333 556 556 500 556 556 278 556 556 222 222 500 222 833 556 556 556 556 333 500 278 556 500 722 500 500 500 334 260 334 584"
    .split(" ")
    .map(Number);

const first = 32;
/** Accented letters are as wide as most; signs of other scripts fill a square. */
const otherLetter = 600;
const square = 1000;
const firstSquare = 0x2e80;

/** Bold letters are wider. */
const bolder = 1.08;

function widthOf(code: number): number {
  const known = widths[code - first];
  return known ?? (code < firstSquare ? otherLetter : square);
}

/**
 * The width of a text in its letters' size: 2 where it is twice as wide as the letters are high.
 * @example textWidth("Oil", false) // 1.222
 */
export function textWidth(text: string, isBold: boolean): number {
  let sum = 0;
  for (const letter of text) sum += widthOf(letter.codePointAt(0) ?? first);
  return (sum / 1000) * (isBold ? bolder : 1);
}

/** Lines a text takes in a room of that width, measured as its letters are; a long word is broken. */
export function linesIn(text: string, room: number, isBold: boolean): number {
  const space = textWidth(" ", isBold);
  let lines = 1;
  let used = 0;
  for (const word of text.split(" ")) {
    const width = textWidth(word, isBold);
    if (used > 0 && used + space + width > room) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? space : 0) + width;
    const over = Math.ceil(used / room) - 1;
    if (over > 0) {
      lines += over;
      used -= over * room;
    }
  }
  return lines;
}
