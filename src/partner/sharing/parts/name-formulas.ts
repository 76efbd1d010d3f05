/** Defined names whose formula calls ours. */
import { splice } from "../../../sheet/formula/splice";
import type { Package } from "../../../xlsx/package/package";
import { readWorkbookPart } from "../../../xlsx/read/workbook-part";
import { escapeText } from "../../../xlsx/xml/escape";
import { attribute, count } from "../../../xlsx/xml/scan";
import { childOf, childrenOf, type Node } from "../../../xlsx/xml/tree";
import { type Converter, mayCallUs } from "../converter";
import { fixedFormula } from "./fixed-formula";
import type { Instance } from "../workings/instance";
import { shownHome } from "../workings/standing";
import type { Ledger } from "../ledger";
import type { Tally } from "../report";
import { written } from "../workings/template";

const listed = (root: Node): Node[] => childrenOf(childOf(root, "definedNames"), "definedName");

export class NameFormulas {
  readonly instances: Instance[] = [];
  /** By their place in the list. */
  private readonly changed = new Map<number, Instance>();

  constructor(file: Package, converter: Converter, tally: Tally) {
    const { root, sheets } = readWorkbookPart(file);
    for (const [index, node] of listed(root).entries()) {
      if (!mayCallUs(node.text)) continue;
      const label = `the name ${attribute(node, "name") ?? ""}`;
      const sheet = sheets[count(node, "localSheetId", -1)]?.name ?? sheets[0]?.name ?? "";
      const instance = fixedFormula(converter, node.text, { sheet, row: 0, column: 0, label });
      if (instance) this.take(index, instance, tally);
    }
  }

  private take(index: number, instance: Instance, tally: Tally): void {
    const { template, home } = instance;
    for (const id of template.ids) tally.ids.add(id);
    if (template.kind === "left") return tally.leave(shownHome(home), template.reason);
    if (template.kind !== "formulas" || template.isTable) {
      return tally.leave(shownHome(home), "its answer is no single figure");
    }
    tally.formulas += 1;
    this.changed.set(index, instance);
    this.instances.push(instance);
  }

  write(file: Package, ledger: Ledger): void {
    if (this.changed.size === 0) return;
    const { part, text, root } = readWorkbookPart(file);
    const changes = listed(root).flatMap(({ openEnd: start, closeStart: end }, index) => {
      const instance = this.changed.get(index);
      if (instance?.template.kind !== "formulas") return [];
      const parts = instance.template.rows[0]?.[0] ?? [];
      const formula = written(parts, instance, "here");
      ledger.other(shownHome(instance.home), formula, ({ names }) => names[index]?.refersTo);
      return [{ start, end, text: escapeText(formula) }];
    });
    file.set(part, splice(text, changes));
  }
}
