/**
 * What programs do not agree on, met while a formula is worked out: text in place of a figure that one
 * reads and another does not, TRUE beside 1, a day before March 1900. The result is shown, and the cell
 * is known as doubtful: it is not to be saved.
 */
interface Doubting {
  doubt(): void;
  doubtIfEmpty(): void;
}

let listener: Doubting | undefined;

/** Whoever knows which cell is being worked out. */
export function onDoubt(heard: Doubting): void {
  listener = heard;
}

export function doubt(): void {
  listener?.doubt();
}

/** An empty cell was looked up: where it is all that the formula comes to, one shows 0, another nothing. */
export function doubtIfEmpty(): void {
  listener?.doubtIfEmpty();
}
