/**
 * What the readings of a made logbook's row come to, in doubles, by the definitions of the trade: an acid
 * value counts 56.1 g of KOH for a mole (ISO 660), % FFA is of oleic acid at 282 g/mol (ISO 660), six
 * moles of methanol for one of oil, 0.915 kg/L where no density is said (both common practice, no source).
 */
import type { Key } from "./columns";
import type { MadeLogbook } from "./logbook";
import { kilogramsIn, litresIn, molarMasses } from "./readings";

export interface ByHand {
  readonly correctedTitre: number;
  readonly acidValue: number;
  readonly ffa: number;
  /** g as weighed. */
  readonly catalyst: number;
  /** L. */
  readonly methanol: number;
}

const mean = (all: readonly number[]): number =>
  all.reduce((sum, each) => sum + each, 0) / all.length;

const usualDensity = 0.915;
/** g/mol, from the atomic weights 12.011, 1.008 and 15.999; methanol 0.7914 kg/L (commonly cited). */
const [methanol, methanolDensity, oleic, triolein] = [32.042, 0.7914, 282.468, 885.453] as const;

/** Of one row of one sheet; NaN what does not follow from it. */
export function byHand(made: MadeLogbook, sheet: number, row: number): ByHand {
  const { habit } = made;
  const { cells, columns, headingRow } = made.sheets[sheet] ?? (made.sheets[0] as never);
  const held = (key: Key, at = row): number => {
    const value = cells.values[at]?.[columns.findIndex((each) => each.key === key)];
    return typeof value === "number" ? value : NaN;
  };
  const all = (keys: readonly Key[]): number[] =>
    keys.map((key) => held(key)).filter((each) => !Number.isNaN(each));
  const or = (value: number, other: number): number => (Number.isNaN(value) ? other : value);
  const figure = (key: string): number =>
    Number(made.asked.find((each) => each.key === key)?.value ?? 0);

  /** The last one written down. */
  const blankAbove = (): number => {
    for (let at = row; at > headingRow; at -= 1)
      if (!Number.isNaN(held("blank", at))) return held("blank", at);
    return NaN;
  };
  const blank = {
    column: () => held("blank"),
    "two columns": () => mean(all(["blank", "blank 2"])),
    "once a day": blankAbove,
    beside: () => figure("blank"),
    word: () => 0,
    zero: () => 0,
    neutralised: () => 0,
  }[habit.blank]();
  const titres = all(["titre 1", "titre 2", "titre 3"]);
  const read = titres.length > 0 ? mean(titres) : or(held("mean"), NaN);
  const correctedTitre = habit.reads === "net" ? held("net") : read - blank;

  const { titrant, sample, base, charge } = habit;
  const share = habit.assay / 100;
  const density = habit.density.place === "nowhere" ? usualDensity : habit.density.sample;
  const grams = titrant.value * (titrant.unit === "% w/v" ? 10 : 1);
  const molarity =
    titrant.unit === "mol/L"
      ? titrant.value
      : (grams * (titrant.isAsWeighed ? share : 1)) / molarMasses[titrant.base];
  const portion = or(held("sample"), sample.size);
  const weighed = sample.by === "g" ? portion : portion * density;
  const own = titres.map((titre, at) => (titre - blank) / held(`sample ${at + 1}`));
  const perGram = sample.isOwn ? mean(own) : correctedTitre / weighed;
  const heldFfa = held("ffa") * (habit.ffaIn === "%" ? 1 : 100);
  const acidValue = or(56.1 * molarity * perGram, or(held("acidValue"), (heldFfa * 561) / 282));

  const { oilUnit } = habit;
  const inLitres = oilUnit === "L" || oilUnit === "US gal" || oilUnit === "imp gal";
  const kilograms =
    held("oil") * (inLitres ? litresIn[oilUnit] * density : kilogramsIn[oilUnit as "kg" | "lb"]);
  const per = { "g/L": 1 / density, "g/kg": 1, "%": 10, "percent format": 10 }[charge.per];
  const reaction = kilograms * per * charge.value * (charge.isAsWeighed ? share : 1);
  const catalyst = ((kilograms * acidValue * molarMasses[base]) / 56.1 + reaction) / share;
  const neutral = kilograms * (1 - (acidValue * oleic) / 56_100);
  return {
    correctedTitre,
    acidValue,
    ffa: (acidValue * 282) / 561,
    catalyst,
    methanol: ((neutral / triolein) * 6 * methanol) / methanolDensity,
  };
}
