/** How a maker writes figures and days into cells, tidily or not. */
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import type { Chance } from "../habits/chance";
import type { Held } from "./figures";
import type { Meaning } from "./words/role-words";

export interface Hand {
  /** Figures are typed as words, with a comma. */
  readonly commaTexts: boolean;
  readonly dates: "serial" | "dots" | "slashes" | "words";
  /** The share of cells with something odd. */
  readonly untidy: number;
  readonly isPercentFormat: boolean;
}

const months = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

export function dateText(serial: number, style: Hand["dates"]): string {
  const day = new Date((serial - 25_569) * 86_400_000);
  const d = String(day.getUTCDate()).padStart(2, "0");
  const m = String(day.getUTCMonth() + 1).padStart(2, "0");
  const y = String(day.getUTCFullYear());
  if (style === "dots") return `${d}.${m}.${y}`;
  if (style === "slashes") return `${d}/${m}/${y}`;
  return `${String(day.getUTCDate())} ${months[day.getUTCMonth()] ?? ""} ${y}`;
}

export interface Written {
  readonly value: LogbookValue;
  readonly format: string;
}

export const numberText = (value: number, hand: Hand): string =>
  hand.commaTexts ? String(value).replace(".", ",") : String(value);

export function written(chance: Chance, hand: Hand, meaning: Meaning, held: Held): Written {
  if (meaning === "date" && typeof held === "number")
    return hand.dates === "serial"
      ? { value: held, format: chance.of(["dd/mm/yyyy"]) }
      : { value: dateText(held, hand.dates), format: "General" };
  if (typeof held === "string") return { value: held, format: "General" };
  if (meaning === "ffa" && hand.isPercentFormat)
    return { value: Number((held / 100).toFixed(6)), format: "0.00%" };
  const isCount = meaning === "number";
  if (!isCount && chance.yes(hand.untidy)) {
    const text = numberText(held, hand);
    const odd = chance.of(["", `~${text}`, `${text} ?`, "-", "n/a", text]);
    return { value: odd, format: "General" };
  }
  return hand.commaTexts && !Number.isInteger(held)
    ? { value: numberText(held, hand), format: "@" }
    : { value: held, format: "General" };
}

/** A heading as somebody in a hurry types it: letters changed round, one left out or doubled. */
export function misspelt(chance: Chance, heading: string): string {
  const words = heading.split(" ");
  const at = words.findIndex((word) => /^\p{L}{6,}$/u.test(word));
  if (at < 0) return heading;
  const word = words[at] ?? "";
  const place = chance.whole(2, word.length - 3);
  const kind = chance.of(["swap", "drop", "double"] as const);
  const a = word[place] ?? "";
  const b = word[place + 1] ?? "";
  words[at] =
    kind === "swap"
      ? word.slice(0, place) + b + a + word.slice(place + 2)
      : kind === "drop"
        ? word.slice(0, place) + word.slice(place + 1)
        : word.slice(0, place) + a + word.slice(place);
  return words.join(" ");
}
