/** What about a cell's look was changed in the grid: what a file is told, and what it cannot be told. */
import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { Dress, LookChange } from "../../xlsx";

type Style = IStyleData | undefined;

const isOn = (value: BooleanNumber | undefined | null): boolean => value === BooleanNumber.TRUE;

function hex(colour: Nullable<string>): string | undefined {
  if (!colour) return undefined;
  if (/^#[\da-f]{6}$/i.test(colour)) return colour.toLowerCase();
  const short = /^#([\da-f])([\da-f])([\da-f])$/i.exec(colour);
  if (short) return `#${[...short.slice(1)].map((digit) => digit + digit).join("")}`.toLowerCase();
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(colour);
  if (!parts) return undefined;
  return `#${parts
    .slice(1, 4)
    .map((part) => Number(part).toString(16).padStart(2, "0"))
    .join("")}`;
}

const across = (style: Style): LookChange["horizontal"] => {
  switch (style?.ht) {
    case HorizontalAlign.LEFT:
      return "left";
    case HorizontalAlign.CENTER:
      return "center";
    case HorizontalAlign.RIGHT:
      return "right";
    default:
      return undefined;
  }
};

const down = (style: Style): LookChange["vertical"] => {
  if (style?.vt === VerticalAlign.TOP) return "top";
  return style?.vt === VerticalAlign.MIDDLE ? "center" : "bottom";
};

/** Lines, turned letters and the like: as text, to see whether they are the same. */
const rest = ({ ul, st, ol, bd, tr, va, ff }: IStyleData): string =>
  JSON.stringify([isOn(ul?.s), isOn(st?.s), isOn(ol?.s), bd ?? {}, tr?.a ?? 0, va ?? 1, ff ?? ""]);

const general = "General";

export interface StyleChange {
  readonly dress: Dress;
  /** Something changed that a file is not told of. */
  readonly losesSome: boolean;
}

const unchanged: StyleChange = { dress: {}, losesSome: false };

/** From one look to another; what is the same in both is left out. */
export function styleChange(before: Style, now: Style): StyleChange {
  if (before === now) return unchanged;
  const differs = <T>(read: (style: Style) => T): T | undefined =>
    read(before) === read(now) ? undefined : read(now);
  const pattern = differs((style) => style?.n?.pattern ?? general);
  const look: { -readonly [Key in keyof LookChange]: LookChange[Key] } = {};
  const set = <Key extends keyof LookChange>(key: Key, value: LookChange[Key] | undefined) => {
    if (value !== undefined) look[key] = value;
  };
  set(
    "bold",
    differs((style) => isOn(style?.bl)),
  );
  set(
    "italic",
    differs((style) => isOn(style?.it)),
  );
  set(
    "size",
    differs((style) => style?.fs),
  );
  set(
    "wraps",
    differs((style) => style?.tb === WrapStrategy.WRAP),
  );
  set(
    "colour",
    differs((style) => hex(style?.cl?.rgb)),
  );
  set(
    "fill",
    differs((style) => hex(style?.bg?.rgb)),
  );
  set("horizontal", differs(across));
  set("vertical", differs(down));
  const isTakenAway =
    (hex(before?.bg?.rgb) !== undefined && hex(now?.bg?.rgb) === undefined) ||
    (hex(before?.cl?.rgb) !== undefined && hex(now?.cl?.rgb) === undefined) ||
    (across(before) !== undefined && across(now) === undefined);
  return {
    dress: {
      ...(pattern === undefined ? {} : { format: pattern }),
      ...(Object.keys(look).length === 0 ? {} : { look }),
    },
    losesSome: isTakenAway || rest(before ?? {}) !== rest(now ?? {}),
  };
}
