/**
 * What programs do not agree on, met while a formula is worked out: text in place of a figure that one
 * reads and another does not, TRUE beside 1, a day before March 1900. The result is shown, and the cell
 * is known as doubtful: it is not to be saved.
 */
let listener: () => void = () => undefined;

/** Whoever knows which cell is being worked out. */
export function onDoubt(heard: () => void): void {
  listener = heard;
}

export function doubt(): void {
  listener();
}
