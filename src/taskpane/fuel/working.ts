/**
 * What follows from what was read: asked of the same functions, with the same figures, as the row's own
 * formulas (workbook/tables/fuel-cells).
 */
import { computed, type Exact, exact } from "../../core/exact/exact";
import { as } from "../../core/quantity/quantity";
import { againstLimit, type AgainstLimit } from "../../core/fuel/against-limit";
import { againstLimitInWords } from "../../core/fuel/against-limit-words";
import type { FuelFound } from "../../core/fuel/meaning";
import { isProblem, type Problem } from "../../core/problem/problem";
import { usual } from "../../core/reference/defaults";
import { fuelMost } from "../../core/reference/fuel-limits";
import { judgement } from "../../core/replicates/judgement";
import { replicateSet } from "../../core/replicates/outlier-test";
import { slippedPair } from "../../core/replicates/slipped-pair";
import { verdict } from "../../core/replicates/verdict";
import { functionNamed } from "../../functions/catalogue";
import type { FuelRecord } from "../../workbook/record/fuel-record";
import { readingPart } from "../../workbook/tables/fuel-cells";

/** What a cell with that call shows. */
export type Shown = number | Problem;

const cell = (value: unknown): unknown =>
  typeof value === "object" && value !== null ? Number(String(value as Exact)) : value;

function ask(id: string, ...given: unknown[]): Shown {
  const found = functionNamed(id)?.evaluate(
    given.map((each) => (Array.isArray(each) ? [each.map(cell)] : cell(each))),
  );
  if (isProblem(found)) return found;
  return typeof found === "number" ? found : NaN;
}

export interface Judged {
  readonly value: Shown;
  readonly doubt: number | undefined;
  readonly verdict: AgainstLimit["verdict"] | undefined;
  readonly words: string | undefined;
}

function judged(value: Shown, doubt: Shown | undefined, limit: Exact): Judged {
  const half = doubt === undefined || isProblem(doubt) || !(doubt > 0) ? undefined : doubt;
  if (isProblem(value) || half === undefined) {
    return { value, doubt: half, verdict: undefined, words: undefined };
  }
  const [found, around] = [exact(value), exact(half)];
  return {
    value,
    doubt: half,
    verdict: againstLimit(found, around, limit).verdict,
    words: againstLimitInWords(found, around, limit),
  };
}

function acidJudged(acid: NonNullable<FuelRecord["acid"]>): Judged {
  const given = [acid.titres, acid.blank, acid.molarity, acid.mass] as const;
  const doubt = ask("ACIDVALUEUNCERTAINTY", ...given, acid.titreStep, acid.massStep, acid.percent);
  return judged(ask("MEANACIDVALUE", ...given), doubt, fuelMost.acid);
}

/**
 * What is said of titres of the fuel that do not agree; undefined of those that do. Nothing is left out
 * for it.
 */
function oddTitres({ titres, titreStep }: NonNullable<FuelRecord["acid"]>): string | undefined {
  if (titres.length < 2) return undefined;
  const readings = titres.map((titre) => as("mL", titre));
  const set = replicateSet(readings, titreStep && as("mL", titreStep), usual.confidence);
  const found = judgement(set);
  if (found.marks.every((mark) => mark === "agrees")) return undefined;
  return slippedPair(set, found) ?? verdict(set, found);
}

export interface SoapWorking {
  readonly soap: Shown;
  readonly freeBase: Shown | undefined;
  readonly metal: Judged;
}

function soapWorking(of: NonNullable<FuelRecord["soap"]>): SoapWorking {
  const { base, molarity, mass, titreStep, percent } = of;
  const inFlask = (id: string, titre: unknown, blank: unknown): Shown =>
    ask(id, titre, blank, molarity, mass, base);
  const soap = inFlask("FUELSOAP", of.titre, of.blank);
  const freeBase = of.freeBase && inFlask("FUELCATALYST", of.freeBase, "neutralised");
  const bad = [soap, freeBase].find((each) => isProblem(each));
  const metal = bad ?? ask("FUELMETAL", soap, base, freeBase);
  const read = titreStep?.toNumber();
  const byReading =
    read === undefined
      ? undefined
      : ask(
          "FUELMETAL",
          inFlask(
            "FUELSOAP",
            readingPart * read * Math.sqrt((freeBase ? 4 : 2) / 6),
            "neutralised",
          ),
          base,
        );
  const doubt =
    byReading === undefined || isProblem(byReading) || isProblem(metal)
      ? undefined
      : Math.hypot(
          byReading,
          (readingPart * metal * (percent?.toNumber() ?? 0)) / 100 / Math.sqrt(3),
        );
  return { soap, freeBase, metal: judged(metal, doubt, fuelMost.metals) };
}

export interface Working {
  readonly acid: Judged | undefined;
  /** Where the titres of the acid value do not agree: what is said of them. */
  readonly odd: string | undefined;
  readonly soap: SoapWorking | undefined;
  readonly found: FuelFound;
}

export function workingOf(record: FuelRecord, washed: FuelFound["washed"]): Working {
  const acid = record.acid && acidJudged(record.acid);
  const soap = record.soap && soapWorking(record.soap);
  const metal = soap?.metal;
  return {
    acid,
    odd: record.acid && oddTitres(record.acid),
    soap,
    found: {
      washed,
      acid: acid?.verdict,
      metal:
        metal?.verdict === undefined || isProblem(metal.value)
          ? undefined
          : { verdict: metal.verdict, found: computed(metal.value) },
      hasFreeBase: record.soap?.freeBase !== undefined,
      water: record.water,
      trial: record.trial === "" ? "" : (record.trial as FuelFound["trial"]),
    },
  };
}
