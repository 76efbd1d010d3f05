/** References to sheets, rewritten wherever a part of the file holds them. */
import { type Replacement, splice } from "../../../sheet/formula/splice";
import type { Package } from "../../package/package";
import { refuse } from "../../problem";
import { escapeText } from "../../xml/escape";
import { type OpenTag, scanXml } from "../../xml/scan";
import { withAttribute } from "../../xml/tag";
import {
  formulaAttributes,
  formulaAttributesOf,
  formulaTexts,
  isApart,
  plainAttributes,
  plainTexts,
  sheetAttributesOf,
} from "./places";

export interface Rewriting {
  /** A formula as a file holds it, in a part of that name. */
  formula(text: string, part: string): string;
  /** The name of a sheet, where it stands alone. */
  sheet(name: string): string;
  /** Where a hyperlink leads: some leave what is no more. */
  location(text: string, part: string): string;
  /** Could the part hold any of it? */
  concerns(text: string, part: string): boolean;
  /** Does a text that nobody knows as a formula refer to the sheet all the same? */
  refers(text: string): boolean;
}

/** `[Book.xlsx]Log!Pivot` of a chart; `#Log!A1` of a link in a drawing. */
const marked = /^(\[[^\]]*\]|#)(.*)$/s;

function behindMark(text: string, formula: (text: string) => string): string {
  const [, mark, rest] = marked.exec(text) ?? [];
  return mark === undefined || rest === undefined ? text : mark + formula(rest);
}

class PartRewriter {
  readonly changes: Replacement[] = [];
  private readonly open_: { tag: OpenTag; text: string }[] = [];

  constructor(
    private readonly part: string,
    private readonly source: string,
    private readonly by: Rewriting,
  ) {}

  private attribute(tag: OpenTag, local: string, value: string): string {
    const { by } = this;
    if (sheetAttributesOf.get(tag.local)?.has(local)) return by.sheet(value);
    if (tag.local === "hyperlink" && local === "location") return by.location(value, this.part);
    const isFormula =
      formulaAttributes.has(local) || formulaAttributesOf.get(tag.local)?.has(local) === true;
    if (isFormula) return by.formula(value, this.part);
    const isLink = tag.local === "Relationship" && local === "Target";
    if (isLink)
      return value.startsWith("#")
        ? behindMark(value, (text) => by.location(text, this.part))
        : value;
    if (!plainAttributes.has(local)) this.refuseUnknown(value);
    return value;
  }

  private refuseUnknown(text: string): void {
    if (this.by.refers(text)) refuse({ code: "unknown-reference", part: this.part });
  }

  open(tag: OpenTag): void {
    this.open_.push({ tag, text: "" });
    let changed = this.source.slice(tag.start, tag.openEnd);
    const before = changed;
    for (const { name, local, value, uri } of Object.values(tag.attributes)) {
      if (uri === "http://www.w3.org/2000/xmlns/") continue;
      const now = this.attribute(tag, local, value);
      if (now !== value) changed = withAttribute(changed, name, now);
    }
    if (changed !== before)
      this.changes.push({ start: tag.start, end: tag.openEnd, text: changed });
  }

  text(found: string): void {
    const last = this.open_.at(-1);
    if (last) last.text += found;
  }

  close(tag: OpenTag, _depth: number, closeStart: number): void {
    const text = this.open_.pop()?.text ?? "";
    if (text === "") return;
    const isPivot = tag.local === "name" && this.open_.at(-1)?.tag.local === "pivotSource";
    const now = isPivot
      ? behindMark(text, (each) => this.by.formula(each, this.part))
      : formulaTexts.has(tag.local)
        ? this.by.formula(text, this.part)
        : text;
    if (now !== text) {
      this.changes.push({ start: tag.openEnd, end: closeStart, text: escapeText(now) });
    } else if (!formulaTexts.has(tag.local) && !plainTexts.has(tag.local)) this.refuseUnknown(text);
  }
}

export function rewriteParts(file: Package, by: Rewriting): void {
  for (const part of file.names) {
    if (isApart(part)) continue;
    const text = file.text(part);
    if (text === undefined || !by.concerns(text, part)) continue;
    const rewriter = new PartRewriter(part, text, by);
    scanXml(part, text, rewriter);
    if (rewriter.changes.length > 0) file.set(part, splice(text, rewriter.changes));
  }
}
