/** Every held result of one row, in the order in which one is worked out from the other. */
import { type Exact, exact } from "../../core/exact/exact";
import { columnLetters } from "../column-letters";
import { columnOf, type LogbookMapping, type MappedColumn } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { checkFigure, freshMemory, type Memory, type Verdict } from "./check-figure";
import { effectOf, lyeBy, rightAcidLye, rightLye, type Effect } from "./effect";
import type { Finding } from "./finding";
import { type FormulaFacts, formulaReader, shown } from "./formula-facts";
import { scaleOf, type HeldFigure } from "./held-figure";
import type { MistakeId } from "./mistakes";
import type { Readings } from "./readings";
import { shownLike } from "./shown-like";
import type { Slip } from "./slips";
import { originsOf, type Upstream, upstreamOf } from "./upstream";
import { hasTitration, kilograms, litres, type Ways } from "./worked";
import type { Written } from "./worked-out";

const order: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "oilMass",
  "reactionDose",
  "acidDose",
  "catalystRate",
  "catalyst",
];

export interface CheckedFigure {
  readonly figure: HeldFigure;
  readonly facts: FormulaFacts | undefined;
  readonly verdict: Verdict;
}

export interface CheckedRow {
  readonly readings: Readings;
  readonly figures: readonly CheckedFigure[];
  readonly findings: readonly Finding[];
}

/** Weighing to the nearest division of a kitchen balance is no mistake. */
const weighedTolerance = 0.03;

const isPart = (role: RoleId): boolean => role === "acidDose" || role === "reactionDose";

export class RowChecker {
  private readonly memories = new Map<RoleId, Memory>();
  private readonly columns = new Map<RoleId, MappedColumn>();
  private readonly factsOf: (text: string, row: number) => FormulaFacts | undefined;
  private readonly hasTotal: boolean;

  constructor(private readonly mapping: LogbookMapping) {
    this.factsOf = formulaReader(mapping);
    for (const role of [...order, "weighed"] as const) {
      const column = columnOf(mapping, role);
      if (column) this.columns.set(role, column);
      this.memories.set(role, freshMemory());
    }
    this.hasTotal =
      this.columns.has("catalyst") ||
      this.columns.has("catalystRate") ||
      this.columns.has("weighed");
  }

  check(given: Readings): CheckedRow {
    const readings = settledAcid(given);
    const figures: CheckedFigure[] = [];
    const upstream: Upstream[] = lotFigures(readings);
    for (const role of order) {
      const figure = readings.held.get(role);
      if (!figure) continue;
      const unit = this.columns.get(role)?.unit;
      const facts = this.factsOf(figure.formula, readings.row);
      const writtens: Written[] = isPart(role) && this.hasTotal ? ["weighed", "pure"] : ["weighed"];
      if (isPart(role) && !readings.assay) writtens.push("pure");
      const verdict = checkFigure({
        role,
        unit,
        held: figure,
        readings,
        froms: originsOf(role, upstream, facts),
        facts,
        writtens,
        memory: this.memories.get(role) ?? freshMemory(),
      });
      figures.push({ figure, facts, verdict });
      const written = verdict.kind === "not-checked" ? "pure" : verdict.written;
      const next = upstreamOf(figure, unit, written, readings);
      if (next) upstream.push(next);
    }
    return { readings, figures, findings: this.findingsIn(readings, figures) };
  }

  private findingsIn(readings: Readings, figures: readonly CheckedFigure[]): Finding[] {
    const wrong = figures.filter(({ verdict }) => verdict.kind === "wrong");
    const held = this.finalLye(readings, figures);
    const isAlone =
      wrong.length === 1 && (wrong[0]?.verdict as { slip?: Slip }).slip?.ids.length === 1;
    const found = wrong.flatMap((each) => this.findings(readings, each, held, isAlone));
    return [
      ...found,
      ...this.carriedFromLot(readings, figures, held, found),
      ...this.weighedOtherwise(readings, figures),
    ];
  }

  private findings(
    readings: Readings,
    { figure, facts, verdict }: CheckedFigure,
    held: Exact | undefined,
    isAlone: boolean,
  ): Finding[] {
    if (verdict.kind !== "wrong") return [];
    const { slip, should } = verdict;
    const ids: readonly MistakeId[] = slip?.ids ?? ["not-recognised"];
    const right = held && this.rightFinal(readings);
    return ids.map((mistake) => {
      const isShown =
        slip !== undefined && facts !== undefined && shown({ ...slip, ids: [mistake] }, facts) > 0;
      const effect =
        isAlone || !slip
          ? held && right && effectOf(readings, held.minus(right))
          : this.modelled(readings, waysOf(slip, mistake));
      return {
        ...this.place(readings, figure),
        mistake,
        should: this.shownIn(figure, should),
        formula: isShown ? figure.formula : "",
        effect: effect ?? (slip ? this.modelled(readings, waysOf(slip, mistake)) : undefined),
      };
    });
  }

  private modelled(readings: Readings, ways: Ways): Effect | undefined {
    const by = lyeBy(readings, ways);
    const right = rightLye(readings);
    return by && right && effectOf(readings, by.minus(right));
  }

  private place(readings: Readings, figure: HeldFigure) {
    const column = this.columns.get(figure.role);
    return {
      sheet: this.mapping.sheet,
      row: readings.row,
      column: figure.column,
      address: columnLetters(figure.column) + String(readings.row + 1),
      heading: column?.heading ?? "",
      role: figure.role,
      label: readings.label,
      held: figure.shown,
      unit: column?.unit ?? "",
    };
  }

  private shownIn(figure: HeldFigure, value: Exact): string {
    const unit = this.columns.get(figure.role)?.unit;
    const scale = scaleOf(figure.role, unit, false);
    return shownLike(value.div(scale).toNumber(), figure.halfDigit / scale.toNumber());
  }

  /** g of lye, as weighed, that the row ends in; undefined when it holds no dose. */
  private finalLye(readings: Readings, figures: readonly CheckedFigure[]): Exact | undefined {
    const of = (role: RoleId): HeldFigure | undefined =>
      figures.find(({ figure }) => figure.role === role)?.figure;
    const total = of("catalyst");
    if (total) return total.value;
    const rate = of("catalystRate");
    const unit = this.columns.get("catalystRate")?.unit;
    const parts =
      unit === "g/L" ? litres(readings, {}, new Map()) : kilograms(readings, {}, new Map());
    if (rate && parts) return rate.value.times(unit === "%" ? parts.times(10) : parts);
    const acid = of("acidDose");
    const acidUnit = this.columns.get("acidDose")?.unit;
    const acidParts =
      acidUnit === "g/L"
        ? litres(readings, {}, new Map())
        : acidUnit === "g/kg"
          ? kilograms(readings, {}, new Map())
          : exact(1);
    return acid && acidParts && acid.value.times(acidParts);
  }

  private rightFinal(readings: Readings): Exact | undefined {
    const isTotal = this.columns.has("catalyst") || this.columns.has("catalystRate");
    return isTotal ? rightLye(readings) : rightAcidLye(readings);
  }

  /** The dose of a batch that rests on a wrong titration in another table. */
  private carriedFromLot(
    readings: Readings,
    figures: readonly CheckedFigure[],
    held: Exact | undefined,
    found: readonly Finding[],
  ): Finding[] {
    const mistake = readings.ofLot?.mistake;
    const dose = figures.find(
      ({ figure, verdict }) =>
        (figure.role === "catalyst" ||
          figure.role === "catalystRate" ||
          figure.role === "acidDose") &&
        verdict.kind === "carried",
    );
    if (!mistake || !dose || dose.verdict.kind !== "carried" || found.length > 0) return [];
    const right = this.rightFinal(readings);
    return [
      {
        ...this.place(readings, dose.figure),
        mistake: mistake.id,
        fromRow: mistake.row + 1,
        should: this.shownIn(dose.figure, dose.verdict.should),
        formula: "",
        effect: held && right && effectOf(readings, held.minus(right)),
      },
    ];
  }

  private weighedOtherwise(readings: Readings, figures: readonly CheckedFigure[]): Finding[] {
    const weighed = readings.held.get("weighed");
    const dose = figures.find(({ figure }) => figure.role === "catalyst");
    if (!weighed || !dose) return [];
    const off = weighed.value.minus(dose.figure.value);
    if (off.abs().lte(dose.figure.value.times(weighedTolerance))) return [];
    const right = rightLye(readings);
    // Whoever weighed the right amount beside a wrong figure made no mistake.
    if (right && weighed.value.minus(right).abs().lte(right.times(weighedTolerance))) return [];
    return [
      {
        ...this.place(readings, weighed),
        mistake: "weighed-otherwise",
        should: this.shownIn(weighed, dose.figure.value),
        formula: "",
        effect: right && effectOf(readings, weighed.value.minus(right)),
      },
    ];
  }
}

const waysByMistake: Readonly<Record<string, readonly (keyof Ways)[]>> = {
  "acid-by-charge": ["acidPart"],
  "acid-left-out": ["acidPart"],
  "blank-not-subtracted": ["blank"],
  "blank-added": ["blank"],
  "percent-as-fraction": ["ffaScale", "assay"],
  "density-as-one": ["sampleDensity", "oilDensity"],
  "other-acid": ["acid"],
  "assay-not-applied": ["assay"],
  "assay-multiplied": ["assay"],
  "other-base": ["otherBase"],
  "percent-as-molarity": ["strength"],
  "other-gallon": ["gallon"],
  "empty-as-zero": ["average"],
};

/** One mistake's share of the ways of a slip that holds two. */
const waysOf = ({ ways }: Slip, mistake: MistakeId): Ways =>
  Object.fromEntries(
    Object.entries(ways).filter(([key]) =>
      (waysByMistake[mistake] ?? []).includes(key as keyof Ways),
    ),
  );

/** A batch whose acid value is that of its lot, or a figure of its own: a blend, a titration not in the book. */
function settledAcid(r: Readings): Readings {
  if (hasTitration(r) || !r.ofLot) return r;
  const { acidValue, heldAcidValue, heldFfa } = r.ofLot;
  const near = (held: HeldFigure | undefined, of: Exact | undefined): boolean =>
    held !== undefined &&
    of !== undefined &&
    held.value.minus(of).abs().toNumber() <=
      held.halfDigit * 1.01 + Math.abs(of.toNumber()) * 0.005;
  const own = r.held.get("acidValue");
  const ownFfa = r.held.get("ffa");
  const asFfa = acidValue?.times(282).div(561);
  const isOfLot =
    (!own || near(own, acidValue) || near(own, heldAcidValue)) &&
    (!ownFfa || near(ownFfa, asFfa) || near(ownFfa, heldFfa));
  if (isOfLot) return r;
  const rest = { ...r };
  delete rest.ofLot;
  return rest;
}

const lotFigures = ({ ofLot, titres }: Readings): Upstream[] => {
  if (!ofLot || titres.some((titre) => titre !== undefined)) return [];
  const { heldAcidValue, heldFfa } = ofLot;
  return [
    ...(heldAcidValue ? [{ role: "acidValue" as const, value: heldAcidValue, doubt: 0.002 }] : []),
    ...(heldFfa ? [{ role: "ffa" as const, value: heldFfa, doubt: 0.002 }] : []),
  ];
};
