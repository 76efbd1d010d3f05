/** In which unit a column is: what its heading names, what its figures leave no doubt of, or nobody knows. */
import { headingParts, type HeadingParts } from "../heading";
import { type ColumnFacts, median } from "../numbers-of-column";
import { type RoleId, roleOf } from "../roles";

/** Of these a wrong unit makes a wrong dose, or water where there is none: one that nothing names is asked for. */
const asked: readonly RoleId[] = [
  "strength",
  "oilAmount",
  "baseCharge",
  "acidDose",
  "reactionDose",
  "catalyst",
  "catalystRate",
  "weighed",
  "waterContent",
];
export const needsUnit = (role: RoleId): boolean => asked.includes(role);

const unitsOf = (role: RoleId): readonly string[] => roleOf(role).units;

/** Where nothing but the role is known. */
export const unitAlways = (role: RoleId): string | undefined =>
  needsUnit(role) ? undefined : unitsOf(role)[0];

/** The unit that a heading names for a role. */
export function unitInHeading(role: RoleId, heading: string): string | undefined {
  const { unit } = headingParts(heading);
  return unit !== undefined && unitsOf(role).includes(unit) ? unit : unitAlways(role);
}

/** Parts of one, not of a hundred: 0.0197 for 1.97 %. A cell shown with % is scaled when it is read. */
function isFraction(id: RoleId, { numbers, isPercentFormat }: ColumnFacts): boolean {
  if (numbers.length === 0 || isPercentFormat) return false;
  if (id === "assay") return numbers.every((figure) => figure <= 1);
  return id === "ffa" && median(numbers) < 0.06 && numbers.every((figure) => figure < 0.4);
}

/** Nobody weighs out fifty kilograms or pounds of lye; a charge above 1.9 % is none. */
const surelyGrams = 50;
const surelyPerLitre = 1.9;
const mostPercentWater = 5;

function unitByFigures(role: RoleId, { numbers, isPercentFormat }: ColumnFacts) {
  const middle = median(numbers);
  if (role === "baseCharge" && numbers.length > 0)
    return isPercentFormat || middle <= surelyPerLitre ? "%" : "g/L";
  // oil holds a few percent of water at most, and is never known to 50 parts in a million
  if (role === "waterContent" && numbers.length > 0)
    return isPercentFormat || middle < mostPercentWater ? "%" : middle >= 50 ? "ppm" : undefined;
  return unitsOf(role)[0] === "g" && middle >= surelyGrams ? "g" : undefined;
}

export function unitOfColumn(
  role: RoleId,
  parts: HeadingParts,
  facts: ColumnFacts,
): string | undefined {
  if (isFraction(role, facts)) return "fraction";
  if (parts.unit !== undefined && unitsOf(role).includes(parts.unit)) return parts.unit;
  if (role === "oilAmount" && /\bkg\b/.test(parts.words)) return "kg";
  return unitByFigures(role, facts) ?? unitAlways(role);
}
