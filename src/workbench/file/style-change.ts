/** What about a cell's look was changed in the grid: what a file is told, and what it cannot be told. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { Dress, LookChange } from "../../xlsx";
import { lineName } from "./file-style";

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
      return style?.ht === HorizontalAlign.JUSTIFIED ? undefined : "general";
  }
};

const down = (style: Style): LookChange["vertical"] => {
  if (style?.vt === VerticalAlign.TOP) return "top";
  return style?.vt === VerticalAlign.MIDDLE ? "center" : "bottom";
};

/** Turned letters and the like: as text, to see whether they are the same. */
const rest = ({ ol, tr, va, ff }: IStyleData): string =>
  JSON.stringify([isOn(ol?.s), tr?.a ?? 0, va ?? 1, ff ?? ""]);

type Borders = NonNullable<LookChange["borders"]>;

const sides = { left: "l", right: "r", top: "t", bottom: "b" } as const;

const border = (style: Style, side: keyof typeof sides): Borders["left"] => {
  const found = style?.bd?.[sides[side]];
  if (!found || found.s === BorderStyleTypes.NONE) return undefined;
  return { line: lineName(found.s), colour: hex(found.cl.rgb) ?? "#000000" };
};

/** The sides that differ; undefined where none does. */
function bordersChanged(before: Style, now: Style): Borders | undefined {
  const changed = (Object.keys(sides) as (keyof typeof sides)[]).filter(
    (side) => JSON.stringify(border(before, side)) !== JSON.stringify(border(now, side)),
  );
  if (changed.length === 0) return undefined;
  return Object.fromEntries(changed.map((side) => [side, border(now, side)]));
}

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
    "underlined",
    differs((style) => isOn(style?.ul?.s)),
  );
  set(
    "struck",
    differs((style) => isOn(style?.st?.s)),
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
    differs((style) => hex(style?.cl?.rgb) ?? "none"),
  );
  set(
    "fill",
    differs((style) => hex(style?.bg?.rgb) ?? "none"),
  );
  set("horizontal", differs(across));
  set("vertical", differs(down));
  set("borders", bordersChanged(before, now));
  return {
    dress: {
      ...(pattern === undefined ? {} : { format: pattern }),
      ...(Object.keys(look).length === 0 ? {} : { look }),
    },
    losesSome: rest(before ?? {}) !== rest(now ?? {}),
  };
}
