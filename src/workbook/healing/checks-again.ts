/** CHECKS takes no cell, so nothing makes a spreadsheet run it again but writing its formula again. */
import { isProblem } from "../../core/problem/problem";
import { type Block, type Fault, type Host, isFault } from "../../sheet/port";
import { titreCallId } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import { titreCalls } from "../../sheet/formula/walk";
import { respelled } from "./unanswered";

export function callsChecks(formula: string): boolean {
  if (!/checks/i.test(formula)) return false;
  const read = readFormula(formula);
  return !isProblem(read) && titreCalls(read.tree).some((call) => titreCallId(call) === "CHECKS");
}

/** @param block  the one cell in which the formula stands */
export async function writeAgain(
  host: Host,
  block: Block,
  formula: string,
): Promise<undefined | Fault> {
  const done = await host.write("Run the checks again", [
    {
      do: "set-cells",
      block,
      contents: [[{ kind: "formula", formula: respelled(formula) ?? formula }]],
    },
  ]);
  return isFault(done) ? done : undefined;
}
