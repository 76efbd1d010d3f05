/**
 * Cells that wait for our functions. A formula that is worked out before the add-in is there shows
 * #NAME?, and no recalculation heals it: only writing the same formula again does.
 */
import { isProblem } from "../../core/problem/problem";
import type { Block, Cells } from "../../sheet/port";
import { functionNamed } from "../../functions/catalogue";
import { namespace } from "../../functions/names";
import { titreCallId } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import { splice } from "../../sheet/formula/splice";
import { titreCalls } from "../../sheet/formula/walk";
import { cellAt } from "../../sheet/address";

export interface Unanswered {
  /** One cell. */
  readonly block: Block;
  /** What to write: the same formula, our functions in the spelling that cells show. */
  readonly formula: string;
}

/** Cheap, so that a sheet of other formulas costs nothing. */
const mayCallUs = /titre[._]/i;

/**
 * The formula with TITRE.DOSE where a file's spelling _xldudf_TITRE_DOSE is left over; undefined when it
 * calls no function of ours.
 * @example respelled("=2*[2]!_xldudf_TITRE_DOSE(A1)") // "=2*TITRE.DOSE(A1)"
 */
export function respelled(formula: string): string | undefined {
  if (!mayCallUs.test(formula)) return undefined;
  const read = readFormula(formula);
  if (isProblem(read)) return undefined;
  const ours = titreCalls(read.tree).flatMap((call) => {
    const id = titreCallId(call);
    if (id === undefined || !functionNamed(id)) return [];
    return [{ ...call.nameAt, text: `${namespace}.${id}` }];
  });
  return ours.length > 0 ? splice(formula, ours) : undefined;
}

const isUnknownName = (content: unknown): boolean =>
  (content as { error?: unknown } | null)?.error === "#NAME?";

/** The cells of a block that wait for our functions. */
export const unansweredIn = ({ block, values, formulas }: Cells): Unanswered[] =>
  values.flatMap((row, down) =>
    row.flatMap((content, across) => {
      const formula = isUnknownName(content)
        ? respelled(formulas[down]?.[across] ?? "")
        : undefined;
      return formula === undefined
        ? []
        : [{ block: cellAt(block.sheet, block.row + down, block.column + across), formula }];
    }),
  );
