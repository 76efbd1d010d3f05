/** What nobody said and was taken for a re-check: said in one line, so that it can be put right. */
import { columnOf, isKnown, type LogbookMapping } from "../../recognising/mapping";
import { type Basis, basisOf } from "../../recognising/basis";
import { type RoleId, roleOf } from "../../recognising/roles";
import type { Answers } from "../conventions/basis-answers";
import { type Convention, hangsOnDensity, plainConvention } from "../conventions/conventions";
import type { Readings } from "../reading/readings";
import { weighedTolerance } from "../reading/weighed-alone";
import { usualDensity } from "../arithmetic/row-arithmetic";

const shown = (kilogramsPerLitre: number): string => String(Number(kilogramsPerLitre.toFixed(3)));

function densityTaken(rows: readonly Readings[], usual: Convention): string[] {
  const free = rows.filter((row) => hangsOnDensity(row) && row.isDensityStated !== true);
  const [first] = free;
  if (!first) return [];
  if (usual.oilDensity === "hot")
    return ["the oil's density at the temperature of its row, as the doses fit it"];
  const density = usual.oilDensity ?? usual.sampleDensity;
  if (density !== undefined)
    return [`${shown(density)} kg of oil a litre, as the logbook's own figures fit it`];
  const found = new Set(free.map(({ oil }) => shown(usualDensity(oil))));
  return found.size > 1
    ? ["for each kind of oil the density that books give"]
    : [`${shown(usualDensity(first.oil))} kg of oil a litre`];
}

const headed = (mapping: LogbookMapping, role: RoleId): string =>
  columnOf(mapping, role)?.heading ?? roleOf(role).words;

/** What is counted in cups and spoons is right within a step, and no cause is looked for in less. */
function coarselyTaken(mapping: LogbookMapping, rows: readonly Readings[]): string[] {
  const steps = new Map<RoleId, number>();
  for (const { held } of rows)
    for (const [role, { isCoarse, halfDigit }] of held) if (isCoarse) steps.set(role, halfDigit);
  return [...steps].map(([role, grams]) =>
    columnOf(mapping, role)?.within !== undefined
      ? `${headed(mapping, role)} for the dose, since no column holds one: what was weighed counts as right up to ${String(100 * weighedTolerance)} % away from the dose`
      : `${headed(mapping, role)} right within ${String(Number(grams.toPrecision(3)))} g, one step of its measure: it cannot tell less`,
  );
}

/** Grams under a heading of what was weighed that are a dose by their arithmetic. */
const workedThough = (mapping: LogbookMapping): string[] =>
  columnOf(mapping, "catalyst")?.within === 0
    ? [
        `${headed(mapping, "catalyst")} for the dose as it was worked out: nearly each row follows from its readings to the last digit`,
      ]
    : [];

/** What was learned, and the answers that were tried to what nobody said. */
interface TakenFrom {
  readonly usual: Convention | undefined;
  readonly answers: readonly Answers[];
}

const either = (what: string, bases: readonly Basis[]): string[] =>
  new Set(bases).size > 1
    ? [`${what} pure in one reading and as weighed in the other: a row is right if either fits`]
    : [];

/** Each goes on from "Assumed for this check: ". */
export function takenFor(
  mapping: LogbookMapping,
  rows: readonly Readings[],
  { usual = plainConvention, answers }: TakenFrom,
): string[] {
  const hasDose = rows.some(({ base, charge }) => base !== undefined || charge !== undefined);
  const isWeighed =
    basisOf(mapping, "strength") === "as weighed" ||
    answers.every(({ strength }) => strength === "as weighed");
  // Nobody said it, and no row fits the other.
  const isChargeWeighed =
    basisOf(mapping, "baseCharge") === undefined &&
    answers.every(({ charge }) => charge === "as weighed");
  const [{ assay } = { assay: undefined }] = rows;
  return [
    ...densityTaken(rows, usual),
    ...coarselyTaken(mapping, rows),
    ...workedThough(mapping),
    ...(isWeighed && isKnown(mapping, "strength") && assay !== undefined
      ? ["the lye of the burette is as pure as that of the batch"]
      : []),
    ...either(
      "the grams of the titrant",
      answers.map(({ strength }) => strength),
    ),
    ...(hasDose
      ? either(
          "the base charge",
          answers.map(({ charge }) => charge),
        )
      : []),
    ...(isChargeWeighed && hasDose ? ["the base charge is as weighed, as the doses fit it"] : []),
    ...(usual.byCoefficient ? ["the lye for % FFA by a published coefficient"] : []),
  ];
}
