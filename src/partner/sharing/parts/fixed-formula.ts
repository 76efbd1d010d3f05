/** Formulas that are not in a cell of their own: names, conditional formats, rules for what is typed. */
import type { Converter } from "../converter";
import type { Instance } from "../workings/instance";
import type { Home } from "../workings/standing";

const isHelped = ({ template }: Instance): boolean =>
  template.kind === "formulas" && template.helpers.length + template.blocks.length > 0;

/**
 * One that moves with the cell that uses it may only be written in plain functions where it needs no
 * helper cells: those would have to move with it.
 */
export function fixedFormula(
  converter: Converter,
  text: string,
  home: Omit<Home, "isFixed">,
): Instance | undefined {
  const fixed = converter.instance(text, { ...home, isFixed: true });
  if (fixed?.template.kind !== "left") return fixed;
  const moving = converter.instance(text, { ...home, isFixed: false });
  const isFine = moving?.template.kind === "formulas" && !isHelped(moving);
  return isFine ? moving : fixed;
}
