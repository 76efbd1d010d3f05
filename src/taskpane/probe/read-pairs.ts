/**
 * Volume and reading of a probe, a pair a line: typed, pasted from a sheet, or out of a CSV file. What was
 * said of a reading that was asked about stands behind it in its line: "2.4 12.0 left out".
 */
import type { Exact } from "../../core/exact/exact";
import { as, type Millilitre } from "../../core/quantity/quantity";
import { limits, misses } from "../../core/reference/limits";
import type { ProbePoint } from "../../core/titration/probe";
import { type DecimalMark, readTyped, withMark } from "../widgets/typed-number";
import { isPhScale, notOnScale } from "./scale";

const saidWords = ["kept", "left out"] as const;
export type Said = (typeof saidWords)[number] | "";

export interface PairRead {
  /** From 1, as it stands in the box. */
  readonly line: number;
  readonly point: ProbePoint;
  /** The two as they were typed. */
  readonly typed: readonly [volume: string, reading: string];
  readonly said: Said;
}

export interface PairsRead {
  readonly rows: readonly PairRead[];
  /** Those that count: what is left out is not among them. */
  readonly points: readonly ProbePoint[];
  readonly isPh: boolean;
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

/** A logger writes 7.039999961853027 for 7.04: decimals that no probe shows are cut off. */
const cut = (text: string): string => text.replace(/([.,]\d{9})\d+$/, "$1");

const figureOf = (text: string, mark: DecimalMark): Exact | undefined => {
  const typed = readTyped(cut(text), mark);
  return typed.kind === "number" ? typed.value : undefined;
};

const behind = /[\s;,]*\b(kept|left out)\s*$/i;

const saidOf = (line: string): Said =>
  saidWords.find((word) => word === behind.exec(line)?.[1]?.toLowerCase()) ?? "";

/** What was said stands behind the figures of a line; "" takes it away again. */
export const withSaid = (text: string, line: number, said: Said): string =>
  text
    .split("\n")
    .map((each, at) => {
      if (at + 1 !== line) return each;
      const plain = each.replace(behind, "").trimEnd();
      return said === "" ? plain : `${plain} ${said}`;
    })
    .join("\n");

interface Faulty {
  readonly line: number;
  readonly fault: string;
}

export function readPairs(text: string, mark: DecimalMark): PairsRead {
  const found: PairRead[] = [];
  const faulty: Faulty[] = [];
  let zeros = 0;
  text.split(/\r?\n/).forEach((whole, at) => {
    const line = at + 1;
    const plain = whole.replace(behind, "").trim();
    if (plain === "") return;
    const typed = parted(plain, mark).map((part) => part.replace(/^"|"$/g, ""));
    const [volume, reading] = typed.map((part) => figureOf(part, mark));
    if (found.length === 0 && typed.every((part) => !/\d/.test(part))) return;
    const fault = (words: string): void => {
      faulty.push({ line, fault: `Line ${String(line)} ${words}` });
    };
    if (volume === undefined || reading === undefined || typed.length !== 2) {
      const such = withMark("12.5 7.04", mark);
      fault(`is no pair of mL and reading, such as ${such}: "${plain.slice(0, 40)}".`);
    } else if (volume.isZero() || reading.isZero()) {
      zeros += 1;
    } else if (misses(volume, limits.reading)) {
      fault(`has ${volume.toString()} mL: a volume lies above 0, up to 1000 mL.`);
    } else {
      const point: ProbePoint = [as("mL", volume) as Millilitre, reading];
      const [first = "", second = ""] = typed;
      found.push({ line, point, typed: [cut(first), cut(second)], said: saidOf(whole) });
    }
  });
  const isPh = isPhScale(found.map(({ point: [, reading] }) => reading));
  const rows = found.filter(({ line, point: [, reading] }) => {
    const fault = notOnScale(reading, isPh);
    if (fault !== undefined) faulty.push({ line, fault: `Line ${String(line)} ${fault}` });
    return fault === undefined;
  });
  const faults = faulty.sort((a, b) => a.line - b.line).map(({ fault }) => fault);
  const points = rows.filter(({ said }) => said !== "left out").map(({ point }) => point);
  return { rows, points, isPh, faults, zeros };
}
