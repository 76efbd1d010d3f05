/** Volume and reading of a probe, a pair a line: typed, pasted from a sheet, or out of a CSV file. */
import type { Exact } from "../../core/exact/exact";
import { as, type Millilitre } from "../../core/quantity/quantity";
import { limits, misses } from "../../core/reference/limits";
import type { ProbePoint } from "../../core/titration/probe";
import { type DecimalMark, readTyped } from "../widgets/typed-number";

export interface PairsRead {
  readonly points: readonly ProbePoint[];
  /** Lines that are no pair, in a sentence each; a first line of words is a heading. */
  readonly faults: readonly string[];
  /** Lines with a 0: not filled in, as in a cell. */
  readonly zeros: number;
}

/** Tab, semicolon and spaces part two figures; a comma does where no figure has one as its mark. */
function parted(line: string, mark: DecimalMark): string[] {
  const strong = line.split(/[\t;]/).map((part) => part.trim());
  if (strong.length > 1) return strong.filter((part) => part !== "");
  const spaced = line.trim().split(/\s*,\s+|\s+/);
  if (spaced.length > 1) return spaced;
  return mark === "." ? line.trim().split(",") : [line.trim()];
}

const figureOf = (text: string, mark: DecimalMark): Exact | undefined => {
  const typed = readTyped(text.replace(/^"|"$/g, ""), mark);
  return typed.kind === "number" ? typed.value : undefined;
};

export function readPairs(text: string, mark: DecimalMark): PairsRead {
  const points: ProbePoint[] = [];
  const faults: string[] = [];
  let zeros = 0;
  const lines = text.split(/\r?\n/);
  lines.forEach((line, at) => {
    if (line.trim() === "") return;
    const parts = parted(line, mark);
    const [volume, reading] = parts.map((part) => figureOf(part, mark));
    const isHeading = points.length === 0 && parts.every((part) => !/\d/.test(part));
    if (isHeading) return;
    if (volume === undefined || reading === undefined || parts.length !== 2) {
      faults.push(
        `Line ${String(at + 1)} is no pair of mL and reading: "${line.trim().slice(0, 40)}".`,
      );
    } else if (volume.isZero() || reading.isZero()) {
      zeros += 1;
    } else if (misses(volume, limits.reading) || misses(reading, limits.probeReading)) {
      faults.push(`Line ${String(at + 1)}: mL above 0 up to 1000, pH or mV from -2000 to 2000.`);
    } else {
      points.push([as("mL", volume) as Millilitre, reading]);
    }
  });
  return { points, faults, zeros };
}
