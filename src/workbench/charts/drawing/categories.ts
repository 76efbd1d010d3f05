/** The words below the axis of categories: as many as have room, turned where that shows more of them. */
import { fitted, widthOf } from "./letters";

export interface CategoryWords {
  /** Index and text of those that are shown. */
  readonly shown: readonly (readonly [index: number, text: string])[];
  readonly turned: boolean;
  /** Height they take. */
  readonly height: number;
}

const lineHeight = 14;
const longest = 110;
const longestTurned = 90;
/** Turned by 45 degrees, a line takes that share of its length in height. */
const slant = Math.SQRT1_2;

export function categoryWords(words: readonly string[], width: number): CategoryWords {
  const band = width / Math.max(1, words.length);
  const widest = words.reduce((found, word) => Math.max(found, widthOf(word)), 0);
  const every = Math.max(1, Math.ceil((Math.min(widest, longest) + 8) / band));
  const isTurned = every > 1 && band >= lineHeight;
  const step = isTurned ? 1 : every;
  const room = isTurned ? longestTurned : Math.min(longest, step * band - 6);
  const shown = words.flatMap((word, index) => {
    const text = index % step === 0 ? fitted(word, room) : "";
    return text === "" ? [] : [[index, text] as const];
  });
  const height = isTurned
    ? Math.max(...shown.map(([, text]) => widthOf(text)), 0) * slant + lineHeight
    : lineHeight;
  return { shown, turned: isTurned, height: shown.length === 0 ? 0 : height };
}

/** Names of bars that lie: how wide the room at their left is. */
export const besideBars = (words: readonly string[], room: number): number =>
  Math.min(
    room,
    words.reduce((found, word) => Math.max(found, widthOf(word)), 0),
  );
