/**
 * One logbook row, from nine doubles to four: corrected titre, % FFA, acid value, catalyst. The same by
 * our core, by a kept general-purpose library at the same precision, and in doubles.
 */
import { all, type BigNumber, create } from "mathjs";
import { catalyst } from "../../core/batch/catalyst";
import { isProblem, type Outcome } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { Exact } from "../../core/exact/exact";
import { quantity } from "../../core/quantity/quantity";
import { baseNamed } from "../../core/reference/bases";
import { acidValue } from "../../core/titration/acid-value";
import { correctedTitre } from "../../core/titration/corrected-titre";
import { ffaPercent } from "../../core/titration/free-fatty-acid";
import { held, type Measure, told } from "./figure";
import { growthOf } from "./growth";
import { byTurns, quietOf } from "./measure";

type Row = readonly [number, number, number, number, number, number, number, number, number];
type Results = readonly number[];

/** Readings on the grid of a burette and a balance, all different. */
const rows = (count: number): Row[] =>
  Array.from({ length: count }, (_, at): Row => {
    const titre = (offset: number): number =>
      Number((2 + ((at * 7 + offset) % 200) / 100).toFixed(2));
    return [titre(0), titre(3), titre(5), 0.15, 0.1, 7.05, 91.5 + at / 10, 90, 0.765];
  });

const certain = <T extends Exact>(outcome: Outcome<T>): T => {
  if (isProblem(outcome)) throw new Error(say(outcome));
  return outcome;
};

const koh = baseNamed("KOH");
const limit = quantity("%", 30);

function byCore([a, b, c, blank, strength, mass, oil, assay, charge]: Row): Results {
  if (koh === undefined) throw new Error("no KOH");
  const titre = certain(
    correctedTitre(
      [quantity("mL", a), quantity("mL", b), quantity("mL", c)],
      [quantity("mL", blank)],
    ),
  );
  const molarity = quantity("mol/L", strength);
  const grams = quantity("g", mass);
  const value = certain(acidValue(titre, molarity, grams));
  const ffa = certain(ffaPercent(titre, molarity, grams));
  const dose = certain(
    catalyst(quantity("kg", oil), value, koh, quantity("%", assay), quantity("%", charge), limit),
  );
  return [titre.toNumber(), ffa.toNumber(), value.toNumber(), dose.toNumber()];
}

if (!all) throw new Error("the library came without its functions");
const math = create(all, { number: "BigNumber", precision: 34 });
const big = (value: number | string): BigNumber => math.bignumber(value);
const three = big(3);
const kohPerMole = big("56.1053");
const kohOfAcidValue = big("56.1");
const oleicTenth = big("28.2");
const hundred = big(100);
const ten = big(10);

type Operation = (a: BigNumber, b: BigNumber) => BigNumber;
// the library types its operations for every kind of number at once
const { add, subtract, multiply, divide } = math as unknown as Record<
  "add" | "subtract" | "multiply" | "divide",
  Operation
>;

function byLibrary([a, b, c, blank, strength, mass, oil, assay, charge]: Row): Results {
  const titre = subtract(divide(add(add(big(a), big(b)), big(c)), three), big(blank));
  const moles = multiply(titre, big(strength));
  const grams = big(mass);
  const value = divide(multiply(moles, kohOfAcidValue), grams);
  const ffa = divide(multiply(moles, oleicTenth), grams);
  const kilograms = big(oil);
  const forAcid = multiply(multiply(kilograms, divide(value, kohOfAcidValue)), kohPerMole);
  const forReaction = multiply(multiply(kilograms, ten), big(charge));
  const dose = divide(multiply(add(forAcid, forReaction), hundred), big(assay));
  return [titre.toNumber(), ffa.toNumber(), value.toNumber(), dose.toNumber()];
}

function byDoubles([a, b, c, blank, strength, mass, oil, assay, charge]: Row): Results {
  const titre = (a + b + c) / 3 - blank;
  const value = (titre * strength * 56.1) / mass;
  const ffa = (titre * strength * 28.2) / mass;
  const dose = (((oil * value) / 56.1) * 56.1053 + oil * 10 * charge) * (100 / assay);
  return [titre, ffa, value, dose];
}

/** The three must give the same, or one of them does not do the job. */
function compared(row: Row): void {
  const [core, library, doubles] = [byCore(row), byLibrary(row), byDoubles(row)];
  core.forEach((value, at) => {
    for (const other of [library[at], doubles[at]]) {
      if (other === undefined || Math.abs(other - value) > 1e-12 * value) {
        throw new Error(`the row ${row.join(", ")} gives ${String(value)} and ${String(other)}`);
      }
    }
  });
}

const each = (given: readonly Row[], work: (row: Row) => Results) => (): number =>
  given.reduce((sum, row) => sum + (work(row)[3] ?? 0), 0);

async function run() {
  const some = rows(2000);
  some.forEach(compared);
  const timed = await byTurns(
    [
      { name: "core", run: each(some, byCore) },
      { name: "library", run: each(some, byLibrary) },
      { name: "doubles", run: each(some, byDoubles) },
    ],
    25,
  );
  const core = quietOf(timed, "core");
  return [
    held("one row in the core", core / quietOf(timed, "library"), 1.2, "x mathjs BigNumber"),
    told("one row in the core", core / quietOf(timed, "doubles"), "x doubles", 0),
    ...(await growthOf("core", (count) => each(rows(count), byCore))),
  ];
}

export const coreRow: Measure = { name: "core", run };
