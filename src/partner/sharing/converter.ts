/**
 * Formulas that call our functions, each to its plain form. A formula that was filled into many cells
 * is read and written out once; for the other cells only its gaps are filled.
 */
import { sheetLimits } from "../../sheet/spreadsheet-limits";
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { Twin } from "../../functions/twin";
import { type Formula, readFormula } from "../../sheet/formula/read";
import { nodesOf, titreCalls } from "../../sheet/formula/walk";
import { isReadable, unreadable } from "../../sheet/formula/readable";
import type { Facts } from "./facts";
import type { Instance } from "./workings/instance";
import type { Home, Room } from "./workings/standing";
import { cut, piecesIn, restored, spotOf } from "./pieces";
import type { Template } from "./workings/template";
import { isShortEnough, writeOut } from "./write-out";

/** Anything that may be a call of ours; what it is, the reader says. */
export const mayCallUs = (text: string): boolean => /titre[._]/i.test(text);

const spills = /#|ANCHORARRAY/i;

/** One form of formula: the text without its cells. */
interface Form {
  readonly canonical: string;
  /** Undefined where it cannot be read. */
  readonly formula: Formula | undefined;
  readonly isOurs: boolean;
  /** Which pieces are the corners of blocks: forms of other sizes come out otherwise. */
  readonly blocks: readonly (readonly [number, number])[];
  /** It depends on the very cells. */
  readonly isOneOfAKind: boolean;
}

function formOf(canonical: string): Form {
  const formula = readFormula(canonical);
  if (isProblem(formula)) {
    return { canonical, formula: undefined, isOurs: true, blocks: [], isOneOfAKind: false };
  }
  const blocks = [...nodesOf(formula.tree)].flatMap((node) => {
    if (node.kind !== "reference" || node.shape !== "block") return [];
    const [from, to] = piecesIn(node.text);
    return from === undefined || to === undefined ? [] : [[from, to] as const];
  });
  const isOurs = titreCalls(formula.tree).length > 0;
  const isOneOfAKind = spills.test(canonical);
  return { canonical, formula, isOurs, blocks, isOneOfAKind };
}

/** Sizes of the blocks, from their corners. */
function sizes(form: Form, pieces: readonly string[]): string {
  let key = "";
  for (const [from, to] of form.blocks) {
    const a = spotOf(pieces[from] ?? "");
    const b = spotOf(pieces[to] ?? "");
    key += `${String(Math.abs(a.row - b.row))},${String(Math.abs(a.column - b.column))};`;
  }
  return form.isOneOfAKind ? key + pieces.join() : key;
}

/** Why it cannot be read, with places in the text as it was written. */
function broken(text: string): Template {
  const read = readFormula(text);
  const why = isProblem(read) ? say(read) : unreadable;
  const reason = why.charAt(0).toLowerCase() + why.slice(1).replace(/\.$/, "");
  return { kind: "left", ids: [], reason, isSentence: false };
}

const tooLong: Template = {
  kind: "left",
  ids: [],
  reason: "it is longer than a formula can be",
  isSentence: false,
};

const nowhere: Room = { row: 0, siblings: undefined };

export class Converter {
  private readonly forms = new Map<string, Form>();
  private readonly templates = new Map<string, Template>();

  constructor(
    readonly facts: Facts,
    private readonly twinOf: (id: string) => Twin | undefined,
  ) {}

  /** Undefined when it calls none of our functions. */
  instance(formula: string, home: Home): Instance | undefined {
    if (!isReadable(formula)) return { template: tooLong, pieces: [], home, room: nowhere };
    const { canonical, pieces } = cut(formula);
    let form = this.forms.get(canonical);
    if (!form) this.forms.set(canonical, (form = formOf(canonical)));
    if (!form.isOurs) return undefined;
    const template = this.template(form, pieces, home);
    return { template, pieces, home, room: nowhere };
  }

  private template(form: Form, pieces: readonly string[], home: Home): Template {
    const key = `${home.sheet}\n${home.isFixed ? "fixed" : ""}\n${sizes(form, pieces)}\n${form.canonical}`;
    const known = this.templates.get(key);
    if (known) return this.checked(known, pieces, home);
    if (!form.formula) return broken(restored(form.canonical, pieces));
    const around = { facts: this.facts, home, pieces };
    const made = writeOut(form.canonical, form.formula.tree, around, this.twinOf);
    this.templates.set(key, made);
    return made;
  }

  /** Long forms are looked at again: other cells may have longer addresses. */
  private checked(template: Template, pieces: readonly string[], home: Home): Template {
    if (template.kind !== "formulas" || isFarFromLimit(template)) return template;
    if (isShortEnough(template, pieces, home)) return template;
    const reason = "its plain formula is longer than a cell can hold";
    return { kind: "left", ids: template.ids, reason, isSentence: false };
  }
}

/** A gap takes less than that but for long sheet names. */
const perGap = 128;
const far = new WeakMap<Template, boolean>();

function isFarFromLimit(template: Extract<Template, { kind: "formulas" }>): boolean {
  const known = far.get(template);
  if (known !== undefined) return known;
  const all = [
    ...template.rows.flat().filter((parts) => parts !== undefined),
    ...template.helpers.map(({ parts }) => parts),
    ...template.blocks.flatMap(({ rows }) => rows.flat()),
  ];
  const isFar = all.every(
    (parts) =>
      parts.reduce((sum, part) => sum + (typeof part === "string" ? part.length : perGap), 0) <
      sheetLimits.formula,
  );
  far.set(template, isFar);
  return isFar;
}
