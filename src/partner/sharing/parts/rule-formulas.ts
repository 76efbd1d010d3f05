/** Conditional formats and rules for what may be typed, of the file's own kind and of the newer one. */
import type { Replacement } from "../../../sheet/formula/splice";
import { readArea } from "../../../xlsx/cell-address";
import { formulaFromFile } from "../../../xlsx/formulas/from-file";
import type { Workbook } from "../../../xlsx/model";
import { scanSheet } from "../../../xlsx/read/sheet-scan";
import type { ListedSheet } from "../../../xlsx/read/workbook-part";
import { escapeText } from "../../../xlsx/xml/escape";
import { attribute } from "../../../xlsx/xml/scan";
import { descendants, type Node } from "../../../xlsx/xml/tree";
import { type Converter, mayCallUs } from "../converter";
import { fixedFormula } from "./fixed-formula";
import type { Instance } from "../workings/instance";
import { shownHome } from "../workings/standing";
import type { Ledger } from "../ledger";
import type { Tally } from "../report";
import { written } from "../workings/template";

/** Longer ones are refused in a rule for what may be typed. */
const longestRule = 255;

const kinds = [
  { element: "conditionalFormatting", called: "the conditional format of" },
  { element: "dataValidation", called: "the rule for what may be typed in" },
] as const;

interface Sheet {
  readonly listed: Pick<ListedSheet, "name">;
  readonly frame: Node;
}

/** The innermost elements that hold a formula. */
const formulasIn = (node: Node): Node[] =>
  ["formula", "formula1", "formula2", "f"]
    .flatMap((local) => descendants(node, local))
    .filter(({ children }) => children.length === 0);

/** The same text, from the rules of a sheet of the finished copy; undefined where no rule has it. */
function ruleText({ file }: Workbook, part: string, text: string): string | undefined {
  const { frame } = scanSheet(part, file.need(part), { cell: () => undefined });
  const rules = kinds.flatMap(({ element }) => descendants(frame, element));
  return rules.flatMap(formulasIn).find((node) => node.text === text)?.text;
}

const areasOf = (node: Node): string =>
  attribute(node, "sqref") ?? descendants(node, "sqref")[0]?.text ?? "";

/** A formula of ours in a rule, and which rule it is in. */
interface RuleFormula {
  readonly node: Node;
  /** The cells the rule is for. */
  readonly areas: string;
  readonly label: string;
  readonly isForTyping: boolean;
}

export function ruleFormulas({ listed, frame }: Sheet): RuleFormula[] {
  return kinds.flatMap(({ element, called }) =>
    descendants(frame, element).flatMap((rule) => {
      const areas = areasOf(rule);
      const label = `${called} ${areas} on ${listed.name}`;
      const isForTyping = element === "dataValidation";
      const ours = formulasIn(rule).filter(({ text }) => mayCallUs(text));
      return ours.map((node) => ({ node, areas, label, isForTyping }));
    }),
  );
}

export class RuleFormulas {
  readonly instances: Instance[] = [];
  private readonly changed: { readonly node: Node; readonly instance: Instance }[] = [];

  constructor(sheet: Sheet, converter: Converter, tally: Tally) {
    for (const { node, areas, label, isForTyping } of ruleFormulas(sheet)) {
      const area = readArea(areas.split(" ")[0] ?? "");
      const { row, column } = area ?? { row: 0, column: 0 };
      const isOneCell = readArea(areas) !== undefined && area?.rows === 1 && area.columns === 1;
      const home = { sheet: sheet.listed.name, row, column, label };
      const instance = isOneCell
        ? converter.instance(node.text, { ...home, isFixed: false })
        : fixedFormula(converter, node.text, home);
      if (instance) this.take(node, instance, isForTyping, tally);
    }
  }

  get isEmpty(): boolean {
    return this.changed.length === 0;
  }

  private take(node: Node, instance: Instance, isShort: boolean, tally: Tally): void {
    const { template, home } = instance;
    for (const id of template.ids) tally.ids.add(id);
    if (template.kind === "left") return tally.leave(shownHome(home), template.reason);
    if (template.kind !== "formulas" || template.isTable) {
      return tally.leave(shownHome(home), "its answer is no single figure");
    }
    const isTooLong = written(template.rows[0]?.[0] ?? [], instance, "here").length > longestRule;
    if (isShort && isTooLong) {
      return tally.leave(shownHome(home), "its plain formula is longer than a rule can be");
    }
    tally.formulas += 1;
    this.instances.push(instance);
    this.changed.push({ node, instance });
  }

  replacements(text: string, part: string, ledger: Ledger): Replacement[] {
    return this.changed.map(({ node, instance }) => {
      const { template } = instance;
      const parts = (template.kind === "formulas" && template.rows[0]?.[0]) || [];
      const { openEnd: start, closeStart: end } = node;
      const formula = written(parts, instance, "here");
      if (text.slice(start, end).trim() === "") return { start, end, text: "" };
      ledger.other(shownHome(instance.home), formula, (after) => {
        const found = ruleText(after, part, formula);
        return found && formulaFromFile(found);
      });
      return { start, end, text: escapeText(formula) };
    });
  }
}
