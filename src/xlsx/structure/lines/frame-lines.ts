/**
 * All of a sheet's part but its cells: what stands on the sheet moves or goes with its cells, and the
 * formulas in it are rewritten. Of a sheet whose lines stay, the formulas alone.
 */
import type { Replacement } from "../../../sheet/formula/splice";
import { readArea } from "../../cell-address";
import { attribute, count } from "../../xml/scan";
import type { Node } from "../../xml/tree";
import { isSameSheet } from "../sheets/in-formula";
import { formulaAttributes } from "../sheets/places";
import { movedAnchor } from "./anchors";
import { keptColumns } from "./column-looks";
import { tagOf, textOf, without } from "./in-place";
import type { Lines } from "./lines";
import { movedFormula } from "./moved-formula";
import { emptyLists, placesOf } from "./places";
import { movedAreas, nearAreas } from "./refs";
import { movedRuleNode } from "./rule-nodes";
import { movedView } from "./views";

interface Visited {
  /** How many of it there are now. */
  readonly many: number;
  readonly changes: readonly Replacement[];
}

const gone: Visited = { many: 0, changes: [] };
const kept = (changes: readonly Replacement[] = []): Visited => ({ many: 1, changes });

export class FrameLines {
  private readonly isMoving: boolean;

  constructor(
    private readonly part: string,
    private readonly sheet: string,
    private readonly lines: Lines,
  ) {
    this.isMoving = isSameSheet(sheet, lines.sheet);
  }

  changes(frame: Node): Replacement[] {
    return frame.children.flatMap((child) => {
      const { many, changes } = this.visit(child);
      return many === 0 ? [without(child)] : changes;
    });
  }

  private visit(node: Node): Visited {
    switch (node.local) {
      case "conditionalFormatting":
      case "dataValidation":
        return this.rule(node);
      case "sparkline":
        return this.sparkline(node);
    }
    if (this.isMoving) {
      switch (node.local) {
        case "sheetView":
        case "customSheetView":
          return this.view(node);
        case "brk":
          return this.pageBreak(node);
        case "filterColumn":
          return this.filterColumn(node);
        case "anchor":
          return kept(movedAnchor(node, this.lines, "twoCell"));
        case "cols":
          return this.lines.axis === "column"
            ? kept(keptColumns(this.part, node, this.lines))
            : kept();
      }
    }
    const tag = this.tag(node);
    return tag ? this.list(node, tag) : gone;
  }

  private rule(node: Node): Visited {
    const now = movedRuleNode(this.part, node, this.sheet, this.lines);
    const text = now.join("");
    if (text === this.part.slice(node.start, node.end)) return kept();
    const { start, end } = node;
    return { many: now.length, changes: now.length === 0 ? [] : [{ start, end, text }] };
  }

  private formula(text: string): string {
    return movedFormula(text, this.sheet, this.lines) ?? text;
  }

  private sparkline(node: Node): Visited {
    const changes: Replacement[] = [];
    for (const child of node.children) {
      let now: string | undefined = child.text;
      if (child.local === "f") now = this.formula(child.text);
      else if (child.local === "sqref" && this.isMoving) now = movedAreas(child.text, this.lines);
      if (now === undefined) return gone;
      // it is drawn of nothing then, which is said by no formula
      if (child.local === "f" && now.includes("#REF!")) changes.push(without(child));
      else if (now !== child.text) changes.push(textOf(child, now));
    }
    return kept(changes);
  }

  private view(node: Node): Visited {
    const { tags, dropped } = movedView(this.part, node, this.lines);
    const inside = node.children.filter(
      (child) => !dropped.includes(child) && child.local !== "pane",
    );
    return kept([
      ...tags,
      ...dropped.map(without),
      ...inside.flatMap((child) => {
        const { many, changes } = this.visit(child);
        return many === 0 ? [without(child)] : changes;
      }),
    ]);
  }

  /** A break stands before the line whose number it has. */
  private pageBreak(node: Node): Visited {
    const line = count(node, "id");
    const now = this.lines.line(line);
    if (now === undefined) return gone;
    return kept(tagOf(this.part, node, { id: String(now) }));
  }

  /** Buttons are counted from the first column of their filter; they stand in the filter's own tag. */
  private filterColumn(node: Node): Visited {
    const column = this.filterFrom + count(node, "colId");
    if (this.lines.axis === "row") return this.list(node, []);
    const now = this.lines.line(column);
    if (now === undefined) return gone;
    const from = this.lines.near(this.filterFrom);
    return kept(tagOf(this.part, node, { colId: String(now - from) }));
  }

  private filterFrom = 0;

  /** What its tag says otherwise now; undefined when it goes with its cells. */
  private tag(node: Node): Replacement[] | undefined {
    const changed: Record<string, string> = {};
    for (const rule of this.isMoving ? (placesOf.get(node.local) ?? []) : []) {
      const before = attribute(node, rule.attribute);
      if (before === undefined) continue;
      const now =
        rule.gone === "near" ? nearAreas(before, this.lines) : movedAreas(before, this.lines);
      if (now === undefined || (node.local === "mergeCell" && !now.includes(":"))) return undefined;
      changed[rule.attribute] = now;
    }
    for (const { local, name, value } of Object.values(node.attributes)) {
      const isPlace = node.local === "hyperlink" && local === "location";
      if (!isPlace && !formulaAttributes.has(local)) continue;
      const now = this.formula(value);
      // a link whose cells are gone leads where it led
      if (!(isPlace && now.includes("#REF!"))) changed[name] = now;
    }
    return tagOf(this.part, node, changed);
  }

  private list(node: Node, tag: readonly Replacement[]): Visited {
    if (node.local === "autoFilter") this.filterFrom = firstColumn(attribute(node, "ref"));
    const isBreaks = node.local === "rowBreaks" || node.local === "colBreaks";
    if (isBreaks && (node.local === "rowBreaks") !== (this.lines.axis === "row")) return kept();
    const visited = node.children.map((child) => ({ child, ...this.visit(child) }));
    const many = visited.reduce((sum, each) => sum + each.many, 0);
    const inside = visited.flatMap(({ child, many: left, changes }) =>
      left === 0 ? [without(child)] : changes,
    );
    if (many === 0 && node.children.length > 0 && emptyLists.has(node.local)) return gone;
    if (many === node.children.length) return kept([...tag, ...inside]);
    const counts = Object.fromEntries(
      ["count", "manualBreakCount"]
        .filter((name) => attribute(node, name) !== undefined)
        .map((name) => [name, String(many)]),
    );
    return kept([...(tag.length > 0 ? tag : tagOf(this.part, node, counts)), ...inside]);
  }
}

function firstColumn(ref: string | undefined): number {
  const area = ref === undefined ? undefined : readArea(ref);
  return area?.column ?? 0;
}
