/** Colours as files say them (by value, by number, by theme, tinted) to #rrggbb. */
import { attribute } from "../xml/scan";
import { childOf, childrenOf, descendants, type Node } from "../xml/tree";

/** The usual palette by number (ECMA-376 part 1, 18.8.27); the first eight stand there twice. */
const eight = "000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff";
const palette =
  `${eight} ${eight} 800000 008000 000080 808000 800080 008080 c0c0c0 808080 9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc ccccff 000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff 00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99 3366ff 33cccc 99cc00 ffcc00 ff9900 ff6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333 000000 ffffff`.split(
    " ",
  );

/** The order in which colours of a theme are numbered: light before dark. */
const themeOrder =
  "lt1 dk1 lt2 dk2 accent1 accent2 accent3 accent4 accent5 accent6 hlink folHlink".split(" ");

export type Theme = readonly (string | undefined)[];

export function readTheme(root: Node | undefined): Theme {
  const scheme = root && descendants(root, "clrScheme")[0];
  return themeOrder.map((name) => {
    const colour = childOf(scheme, name)?.children[0];
    const hex = colour && (attribute(colour, "lastClr") ?? attribute(colour, "val"));
    return hex && /^[0-9a-f]{6}$/i.test(hex) ? hex.toLowerCase() : undefined;
  });
}

/** Lightness moved towards white (tint above 0) or black, hue and saturation kept (18.8.19). */
function tinted(hex: string, tint: number): string {
  const channels = [0, 2, 4].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255);
  const light = (Math.max(...channels) + Math.min(...channels)) / 2;
  const wanted = tint < 0 ? light * (1 + tint) : light * (1 - tint) + tint;
  const room = (value: number) => 1 - Math.abs(2 * value - 1);
  const scale = room(light) === 0 ? 0 : room(wanted) / room(light);
  return channels
    .map((channel) => Math.round((wanted + (channel - light) * scale) * 255))
    .map((byte) => Math.min(255, Math.max(0, byte)).toString(16).padStart(2, "0"))
    .join("");
}

export class Colours {
  constructor(
    private readonly theme: Theme,
    private readonly own: readonly string[] = [],
  ) {}

  /** The palette a file brings along. */
  static ofStyles(root: Node, theme: Theme): Colours {
    const list = childOf(childOf(root, "colors"), "indexedColors");
    return new Colours(
      theme,
      childrenOf(list, "rgbColor").map((node) => (attribute(node, "rgb") ?? "").slice(-6)),
    );
  }

  private base(node: Node): string | undefined {
    const value = attribute(node, "rgb");
    if (value !== undefined) return value.slice(-6).toLowerCase();
    const themed = attribute(node, "theme");
    if (themed !== undefined) return this.theme[Number(themed)];
    const number = attribute(node, "indexed");
    return number === undefined ? undefined : (this.own[Number(number)] ?? palette[Number(number)]);
  }

  /** Undefined for an automatic colour, or one that cannot be told. */
  of(node: Node | undefined): string | undefined {
    const base = node && this.base(node);
    if (!base || !/^[0-9a-f]{6}$/i.test(base)) return undefined;
    const tint = Number(attribute(node, "tint") ?? 0);
    const isTinted = Math.abs(tint) <= 1 && tint !== 0;
    return `#${isTinted ? tinted(base, tint) : base.toLowerCase()}`;
  }
}
