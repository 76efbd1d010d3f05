/**
 * The styles part, to which looks are added and from which none is ever taken: a number that a cell
 * gives keeps its meaning.
 */
import { splice } from "../../sheet/formula/splice";
import { limits } from "../limits";
import type { Dress, LookChange } from "../patch/edits";
import { refuse } from "../problem";
import { builtInFormats, plainFormatIds } from "../read/number-formats";
import { escapeAttribute } from "../xml/escape";
import { unclosed } from "../xml/insert";
import { attribute, count } from "../xml/scan";
import { prefixed, withAttribute } from "../xml/tag";
import { childOf, type Node, readTree } from "../xml/tree";
import { changedBorder } from "./border";
import { changedFont, storedColour } from "./font";
import { namedLooks } from "./named-looks";
import { StyleList } from "./style-list";

/** Numbers below this one are the format's own. */
const firstOwnFormat = 164;

export class StyleSheet {
  private readonly root: Node;
  private readonly fonts: StyleList;
  private readonly fills: StyleList;
  private readonly borders: StyleList;
  private readonly formats: StyleList;
  private readonly cells: StyleList;
  private readonly made = new Map<string, number>();
  private readonly formatIds = new Map<string, number>(plainFormatIds);
  private nextFormat = firstOwnFormat;

  constructor(
    part: string,
    private readonly text: string,
  ) {
    this.root = readTree(part, text);
    const list = (name: string) => new StyleList(text, this.root, name);
    this.fonts = list("fonts");
    this.fills = list("fills");
    this.borders = list("borders");
    this.formats = list("numFmts");
    this.cells = list("cellXfs");
    if (this.cells.length === 0) {
      refuse({ code: "damaged", part, detail: "it has no formats of cells" });
    }
    for (const format of this.formats.items) {
      const id = count(format, "numFmtId");
      this.formatIds.set(attribute(format, "formatCode") ?? "", id);
      this.nextFormat = Math.max(this.nextFormat, id + 1);
    }
  }

  private get prefix(): string {
    return this.root.prefix;
  }

  private formatId(format: string): number {
    const known = this.formatIds.get(format);
    if (known !== undefined) return known;
    const id = this.nextFormat;
    this.nextFormat += 1;
    this.formatIds.set(format, id);
    const tag = prefixed(this.prefix, "numFmt");
    const code = escapeAttribute(format);
    this.formats.indexOf(`<${tag} numFmtId="${String(id)}" formatCode="${code}"/>`);
    return id;
  }

  /** The number format of a look; for looks of the file. */
  formatOf(style: number): string {
    const xf = this.cells.items[style];
    const id = xf ? count(xf, "numFmtId") : 0;
    const own = this.formats.items.find((node) => count(node, "numFmtId") === id);
    return (own && attribute(own, "formatCode")) ?? builtInFormats[id] ?? "General";
  }

  /** The number of a look like `style`, dressed otherwise. The same question gets the same number. */
  dressed(style: number, { format, look }: Dress): number {
    if (format === undefined && look === undefined) return style;
    const change = typeof look === "string" ? namedLooks[look] : (look ?? {});
    const key = JSON.stringify([style, format, change]);
    const known = this.made.get(key);
    if (known !== undefined) return known;
    const index = this.cells.indexOf(this.xf(style, format, change));
    if (index >= limits.styles) refuse({ code: "too-many-styles" });
    this.made.set(key, index);
    return index;
  }

  private xf(style: number, format: string | undefined, look: LookChange): string {
    const base = this.cells.items[style] ?? (this.cells.items[0] as Node);
    let tag = this.text.slice(base.start, base.openEnd);
    const set = (id: string, value: number, applies: string) => {
      tag = withAttribute(withAttribute(tag, id, String(value)), applies, "1");
    };
    if (format !== undefined) set("numFmtId", this.formatId(format), "applyNumberFormat");
    const own = this.fonts.items[count(base, "fontId")];
    const font = changedFont(this.text, own, look, this.prefix);
    if (font !== undefined) set("fontId", this.fonts.indexOf(font), "applyFont");
    if (look.fill) set("fillId", this.fills.indexOf(this.fill(look.fill)), "applyFill");
    const border = changedBorder(
      this.text,
      this.borders.items[count(base, "borderId")],
      look,
      this.prefix,
    );
    if (border !== undefined) set("borderId", this.borders.indexOf(border), "applyBorder");
    const alignment = this.alignment(base, look);
    if (alignment !== undefined) tag = withAttribute(tag, "applyAlignment", "1");
    return this.closed(base, tag, alignment);
  }

  private fill(colour: string): string {
    if (colour === "none") {
      const none = prefixed(this.prefix, "patternFill");
      const name = prefixed(this.prefix, "fill");
      return `<${name}><${none} patternType="none"/></${name}>`;
    }
    const [fill, pattern, front, back] = ["fill", "patternFill", "fgColor", "bgColor"].map(
      (local) => prefixed(this.prefix, local),
    ) as [string, string, string, string];
    return `<${fill}><${pattern} patternType="solid"><${front} rgb="${storedColour(colour)}"/><${back} indexed="64"/></${pattern}></${fill}>`;
  }

  private alignment(base: Node, look: LookChange): string | undefined {
    const { wraps, horizontal, vertical, indent } = look;
    if (wraps === undefined && !horizontal && !vertical && !indent) return undefined;
    const own = childOf(base, "alignment");
    let tag = own
      ? this.text.slice(own.start, own.openEnd)
      : `<${prefixed(this.prefix, "alignment")}/>`;
    if (own && !own.isEmptyTag) tag = tag.replace(/>$/, "/>");
    if (wraps !== undefined) tag = withAttribute(tag, "wrapText", wraps ? "1" : undefined);
    if (horizontal) tag = withAttribute(tag, "horizontal", horizontal);
    if (indent) tag = withAttribute(tag, "indent", String(indent));
    return vertical ? withAttribute(tag, "vertical", vertical) : tag;
  }

  /** An alignment comes before whatever else is in the element. */
  private closed(base: Node, tag: string, alignment: string | undefined): string {
    const kept = base.children
      .filter((child) => alignment === undefined || child.local !== "alignment")
      .map((child) => this.text.slice(child.start, child.end));
    const inner = (alignment ?? "") + kept.join("");
    const open = unclosed(tag);
    return inner === "" ? `${open}/>` : `${open}>${inner}</${prefixed(base.prefix, base.local)}>`;
  }

  /** The part as it now is. */
  toText(): string {
    const before = this.root.openEnd;
    const lists = [this.formats, this.fonts, this.fills, this.borders, this.cells];
    return splice(
      this.text,
      lists.flatMap((list) => list.replacements(this.prefix, before)),
    );
  }
}
