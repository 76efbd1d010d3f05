/** The known mistakes as ways of working, for the figures in which each can be made. */
import { fattyAcids, oleic } from "../../core/reference/fatty-acids";
import type { RoleId } from "../recognising/roles";
import type { MistakeId } from "./mistakes";
import type { Readings } from "./readings";
import type { Ways } from "./ways";
import { otherBases } from "./worked-dose";

export interface Slip {
  readonly ids: readonly MistakeId[];
  readonly ways: Ways;
}

const slip = (id: MistakeId, ways: Ways): Slip => ({ ids: [id], ways });
const when = (condition: boolean, ...slips: Slip[]): Slip[] => (condition ? slips : []);

/** Acids nearer to oleic than this are a matter of convention. */
const leastAcidDifference = 0.02;
const acids = fattyAcids.filter(
  ({ reportedMass }) =>
    Math.abs(reportedMass.div(oleic.reportedMass).toNumber() - 1) > leastAcidDifference,
);

const hundredfold = 100;
const hundredth = 0.01;

const ofTitre = (r: Readings): Slip[] => [
  ...when(
    r.titres.some((titre) => titre === undefined) && r.titres.some((titre) => titre !== undefined),
    slip("empty-as-zero", { average: "zeros" }),
  ),
  ...when(
    (r.blanks?.length ?? 0) > 0,
    slip("blank-not-subtracted", { blank: "ignored" }),
    slip("blank-added", { blank: "added" }),
    slip("blank-twice", { blank: "twice" }),
  ),
];

const ofSample = (r: Readings): Slip[] => [
  ...when(r.strength !== undefined, slip("percent-as-molarity", { strength: "percent" })),
  ...when(
    r.volume !== undefined && r.masses.every((mass) => mass === undefined),
    slip("density-as-one", { sampleDensity: "one" }),
  ),
];

const ofAcid = (): Slip[] => acids.map((acid) => slip("other-acid", { acid }));
const ofScale: readonly Slip[] = [
  slip("percent-as-fraction", { ffaScale: hundredfold }),
  slip("percent-as-fraction", { ffaScale: hundredth }),
];

const ofOil = ({ amount }: Readings): Slip[] => [
  ...when(amount?.unit.measures === "volume", slip("density-as-one", { oilDensity: "one" })),
  ...when(/_gal$/.test(amount?.unit.name ?? ""), slip("other-gallon", { gallon: "other" })),
];

const ofAssay = ({ assay }: Readings): Slip[] =>
  when(
    assay !== undefined && assay < 99.5,
    slip("assay-not-applied", { assay: "ignored" }),
    slip("assay-multiplied", { assay: "multiplied" }),
    slip("percent-as-fraction", { assay: "over-hundred" }),
    slip("percent-as-fraction", { assay: "under-hundred" }),
  );

const ofBase = ({ base }: Readings): Slip[] =>
  base ? otherBases(base).map((otherBase) => slip("other-base", { otherBase })) : [];

const byCharge = ({ charge }: Readings): Slip[] =>
  when(charge !== undefined, slip("acid-by-charge", { acidPart: "by-charge" }));

/** In the order in which they are thought of: of two that give the same figure, the first. */
export function slipsFor(role: RoleId, r: Readings): Slip[] {
  const titration = [...ofTitre(r), ...ofSample(r)];
  switch (role) {
    case "meanTitre":
      return ofTitre(r).filter(({ ids }) => ids[0] === "empty-as-zero");
    case "correctedTitre":
      return ofTitre(r);
    case "acidValue":
      return [...titration, ...ofScale];
    case "ffa":
      return [...titration, ...ofAcid(), ...ofScale];
    case "oilMass":
      return ofOil(r);
    case "reactionDose":
      return [...ofAssay(r), ...ofOil(r)];
    case "acidDose":
      return [
        ...byCharge(r),
        ...ofBase(r),
        ...ofAssay(r),
        ...ofOil(r),
        ...ofScale,
        ...titration,
        ...ofAcid(),
      ];
    default:
      return [
        ...byCharge(r),
        ...ofAssay(r),
        ...ofBase(r),
        ...ofOil(r),
        slip("acid-left-out", { acidPart: "left-out" }),
        ...ofScale,
        ...titration,
        ...ofAcid(),
      ];
  }
}

/** Two mistakes in one figure. */
export function pairsOf(slips: readonly Slip[]): Slip[] {
  return slips.flatMap((one, at) =>
    slips.slice(at + 1).flatMap((other) => {
      const clash = Object.keys(one.ways).some((key) => key in other.ways);
      return clash || one.ids[0] === other.ids[0]
        ? []
        : [{ ids: [...one.ids, ...other.ids], ways: { ...one.ways, ...other.ways } }];
    }),
  );
}

const keysOf: Readonly<Partial<Record<MistakeId, readonly (keyof Ways)[]>>> = {
  "acid-by-charge": ["acidPart"],
  "acid-left-out": ["acidPart"],
  "blank-not-subtracted": ["blank"],
  "blank-added": ["blank"],
  "blank-twice": ["blank"],
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
export const waysOf = ({ ways }: Slip, mistake: MistakeId): Ways =>
  Object.fromEntries(
    Object.entries(ways).filter(([key]) => keysOf[mistake]?.includes(key as keyof Ways)),
  );
