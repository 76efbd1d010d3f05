/** Cells as the file writes them. */
import { areaName, cellName } from "../../sheet/cell-name";
import type { Place } from "../../sheet/area";
import { encodeString, escapeText } from "../xml/escape";
import { unclosed } from "../xml/insert";
import { prefixed, withAttribute } from "../xml/tag";
import type { RawCell } from "../read/sheet-scan";
import type { Plan, StoredValue } from "./wanted";

/** Attributes and inner text of a cell that holds something. */
interface Body {
  readonly type: string | undefined;
  readonly inner: string;
}

const element = (prefix: string, local: string, inner: string, attributes = ""): string => {
  const name = prefixed(prefix, local);
  return `<${name}${attributes}>${inner}</${name}>`;
};

const needsSpace = (text: string): boolean => /^\s|\s$|\n/.test(text);

/** A result of a formula; texts stand in the value itself. */
function result(value: StoredValue, prefix: string): Body {
  const written = (type: string | undefined, text: string): Body => ({
    type,
    inner: element(prefix, "v", text),
  });
  if (typeof value === "number") return written(undefined, String(value).replace("e", "E"));
  if (typeof value === "boolean") return written("b", value ? "1" : "0");
  if (typeof value === "string") return written("str", escapeText(encodeString(value)));
  return written("e", value.error);
}

/** A typed value; texts stand inline, so that no other part changes. */
function typed(value: StoredValue, prefix: string): Body {
  if (typeof value !== "string") return result(value, prefix);
  const space = needsSpace(value) ? ' xml:space="preserve"' : "";
  const text = element(prefix, "t", escapeText(encodeString(value)), space);
  return { type: "inlineStr", inner: element(prefix, "is", text) };
}

function formula(plan: Extract<Plan, { kind: "formula" }>, prefix: string): Body {
  const { type, inner } =
    plan.result === undefined ? { type: undefined, inner: "" } : result(plan.result, prefix);
  const array = plan.array ? ` t="array" ref="${areaName(plan.array)}"` : "";
  return { type, inner: element(prefix, "f", escapeText(plan.formula), array) + inner };
}

function bodyOf(plan: Plan, prefix: string): Body {
  switch (plan.kind) {
    case "value":
      return plan.value === "" ? { type: undefined, inner: "" } : typed(plan.value, prefix);
    case "formula":
      return formula(plan, prefix);
    case "spilled":
      return result(plan.value, prefix);
    case "result":
      return result(plan.value as StoredValue, prefix);
    default:
      return { type: undefined, inner: "" };
  }
}

export interface CellMarks {
  readonly prefix: string;
  readonly style: number;
  /** For an array formula, the mark that says it spills by itself. */
  readonly dynamicMark: number | undefined;
}

/** A cell written anew. */
export function newCell(place: Place, plan: Plan, marks: CellMarks): string {
  const { prefix, style, dynamicMark } = marks;
  const { type, inner } = bodyOf(plan, prefix);
  const name = prefixed(prefix, "c");
  const isMarked = plan.kind === "formula" && plan.array && dynamicMark !== undefined;
  const attributes = [
    ` r="${cellName(place.row, place.column)}"`,
    style === 0 ? "" : ` s="${String(style)}"`,
    type === undefined ? "" : ` t="${type}"`,
    isMarked ? ` cm="${String(dynamicMark)}"` : "",
  ].join("");
  return inner === "" ? `<${name}${attributes}/>` : `<${name}${attributes}>${inner}</${name}>`;
}

/** The tag of a cell in its part, with another style. */
function styled(text: string, { tag, row, column, style }: RawCell, wanted: number): string {
  const own = text.slice(tag.start, tag.openEnd);
  const named = tag.attributes.r ? own : withAttribute(own, "r", cellName(row, column));
  return style === wanted ? named : withAttribute(named, "s", String(wanted));
}

/** A cell of the file that only looks otherwise. */
export const redressed = (text: string, raw: RawCell, style: number): string =>
  styled(text, raw, style) + text.slice(raw.tag.openEnd, raw.end);

/** A cell of the file whose formula stays, letter for letter, with a new result. */
export function withResult(text: string, raw: RawCell, value: StoredValue, marks: CellMarks) {
  const { type, inner } = result(value, marks.prefix);
  let tag = withAttribute(styled(text, raw, marks.style), "t", type);
  if (raw.tag.attributes.vm) tag = withAttribute(tag, "vm", undefined);
  const own = raw.formula ? text.slice(raw.formula.tag.start, raw.formula.end) : "";
  const name = prefixed(marks.prefix, "c");
  return `${unclosed(tag)}>${own}${inner}</${name}>`;
}

/** A cell of the file whose shared formula is written out. */
export function withOwnFormula(text: string, raw: RawCell, own: string, prefix: string): string {
  const { tag, end } = raw.formula as NonNullable<RawCell["formula"]>;
  return (
    text.slice(raw.tag.start, tag.start) +
    element(prefix, "f", escapeText(own)) +
    text.slice(end, raw.end)
  );
}
