/** A small part as a tree of elements that know where they stand; for parts that are not sheets. */
import { limits } from "../limits";
import { refuse } from "../problem";
import { type Listener, type OpenTag, scanXml } from "./scan";

export interface Node extends OpenTag {
  readonly children: readonly Node[];
  /** Its own text, without that of its children. */
  readonly text: string;
  /** Where "</" stands; for an empty tag, its end. */
  readonly closeStart: number;
  readonly end: number;
}

interface Growing {
  children: Node[];
  text: string;
}

/** Builds the tree from what a scan tells. */
export class TreeBuilder implements Listener {
  private readonly growing: Growing[] = [{ children: [], text: "" }];
  private elements = 0;

  constructor(private readonly part: string) {}

  open(): void {
    this.elements += 1;
    if (this.elements > limits.elements) {
      refuse({ code: "damaged", part: this.part, detail: "it has too many elements" });
    }
    this.growing.push({ children: [], text: "" });
  }

  close(tag: OpenTag, _depth: number, closeStart: number, end: number): void {
    const done = this.growing.pop() as Growing;
    // Written out, since spreading a million of them is slow.
    this.growing.at(-1)?.children.push({
      local: tag.local,
      prefix: tag.prefix,
      uri: tag.uri,
      attributes: tag.attributes,
      start: tag.start,
      openEnd: tag.openEnd,
      isEmptyTag: tag.isEmptyTag,
      children: done.children,
      text: done.text,
      closeStart,
      end,
    });
  }

  text(found: string): void {
    const here = this.growing.at(-1);
    if (here) here.text += found;
  }

  /** The outermost element, once the scan is done. */
  get root(): Node {
    const root = this.growing[0]?.children[0];
    return root ?? refuse({ code: "damaged", part: this.part, detail: "it is empty" });
  }
}

export function readTree(part: string, text: string): Node {
  const builder = new TreeBuilder(part);
  scanXml(part, text, builder);
  return builder.root;
}

/** Children of that name and of their parent's namespace. */
export const childrenOf = (node: Node | undefined, local: string): Node[] =>
  node?.children.filter((child) => child.local === local && child.uri === node.uri) ?? [];

export const childOf = (node: Node | undefined, local: string): Node | undefined =>
  node?.children.find((child) => child.local === local && child.uri === node.uri);

/** All elements below of that name, in any namespace; without recursion. */
export function descendants(node: Node, local: string): Node[] {
  const found: Node[] = [];
  const waiting = [...node.children].reverse();
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (next.local === local) found.push(next);
    for (let index = next.children.length - 1; index >= 0; index--) {
      waiting.push(next.children[index] as Node);
    }
  }
  return found;
}
