/** One list of the styles part (fonts, fills, formats of cells): what is there, and what is added to it. */
import type { Replacement } from "../../sheet/formula/splice";
import { growing, inserting, listXml } from "../xml/insert";
import { childOf, type Node } from "../xml/tree";

export class StyleList {
  readonly items: readonly Node[];
  private readonly list: Node | undefined;
  private readonly byText = new Map<string, number>();
  private readonly added: string[] = [];

  constructor(
    private readonly text: string,
    root: Node,
    private readonly name: string,
  ) {
    this.list = childOf(root, name);
    this.items = this.list?.children ?? [];
    for (const [index, item] of this.items.entries()) {
      this.byText.set(text.slice(item.start, item.end), index);
    }
  }

  get length(): number {
    return this.items.length + this.added.length;
  }

  /** The text of an item, be it of the file or added. */
  itemText(index: number): string | undefined {
    const item = this.items[index];
    return item ? this.text.slice(item.start, item.end) : this.added[index - this.items.length];
  }

  /** The place of an item of that very text, which is added if there is none. */
  indexOf(item: string): number {
    const known = this.byText.get(item);
    if (known !== undefined) return known;
    this.added.push(item);
    this.byText.set(item, this.length - 1);
    return this.length - 1;
  }

  /** `before` is where the list goes if the part has none yet. */
  replacements(prefix: string, before: number): Replacement[] {
    if (this.added.length === 0) return [];
    const added = this.added.join("");
    if (this.list) return growing(this.text, this.list, this.length, added);
    return [inserting(before, listXml(prefix, this.name, this.length, added))];
  }
}
