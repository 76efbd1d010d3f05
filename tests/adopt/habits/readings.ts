/** What was read and decided on one day: nothing that is worked out. */
import type { Chance } from "./chance";
import type { Habit } from "./habit";

export interface Day {
  readonly lot: string;
  readonly batch: string;
  /** Counted from 30 December 1899. */
  readonly date: number;
  readonly titres: readonly number[];
  readonly blanks: readonly number[];
  /** One for each titre, or one for all. */
  readonly samples: readonly number[];
  /** C */
  readonly temperature: number;
  /** In the habit's unit. */
  readonly oil: number;
}

export const molarMasses = { KOH: 56.1053, NaOH: 39.9968, NaOCH3: 54.0238 } as const;
export const litresIn = { L: 1, "US gal": 3.785411784, "imp gal": 4.54609 } as const;
export const kilogramsIn = { kg: 1, lb: 0.45359237 } as const;

/** mol/L of the titrant as it really is. */
function strengthOf({ titrant, assay }: Habit): number {
  if (titrant.unit === "mol/L") return titrant.value;
  const grams = titrant.value * (titrant.unit === "% w/v" ? 10 : 1);
  return (grams * (titrant.isAsWeighed ? assay / 100 : 1)) / molarMasses[titrant.base];
}

const batchIn: Readonly<Record<Habit["oilUnit"], readonly [number, number, number]>> = {
  L: [20, 220, 0],
  kg: [20, 200, 1],
  "US gal": [5, 60, 1],
  "imp gal": [5, 50, 1],
  lb: [40, 400, 0],
};

/** The blank of a logbook hardly changes: the solvent is the same. */
export function dayOf(chance: Chance, habit: Habit, at: number, usualBlank: number): Day {
  const { sample } = habit;
  const grams = sample.by === "g" ? sample.size : sample.size * habit.density.sample;
  const samples = sample.isOwn
    ? Array.from({ length: habit.titres }, () =>
        chance.between(sample.size * 0.93, sample.size * 1.07, 2),
      )
    : [
        sample.by === "g" && chance.yes(0.7)
          ? chance.between(sample.size * 0.95, sample.size * 1.05, 2)
          : sample.size,
      ];
  const acid = chance.between(0.8, 8, 3);
  const perGram = acid / 56.1 / strengthOf(habit);
  const blank =
    habit.blank === "beside" ? usualBlank : chance.between(usualBlank * 0.8, usualBlank * 1.2, 2);
  const hasBlank = !["zero", "word", "neutralised"].includes(habit.blank);
  const titres = Array.from({ length: habit.titres }, (_, which) => {
    const mass = (sample.isOwn ? samples[which] : sample.by === "g" ? samples[0] : grams) ?? grams;
    return Math.max(0.2, chance.between(0.99, 1.01, 3) * perGram * mass) + (hasBlank ? blank : 0);
  }).map((titre) => Number(titre.toFixed(habit.digits.titre)));
  const [from, to, decimals] = batchIn[habit.oilUnit];
  return {
    lot: `L${String(at + 1).padStart(3, "0")}`,
    batch: `B-${String(at + 1)}`,
    date: 45_000 + Math.floor(at / habit.days.rows) * 3,
    temperature: chance.whole(18, 58),
    titres,
    blanks: hasBlank
      ? habit.blank === "two columns"
        ? [blank, Number((blank + chance.of([-0.05, 0, 0.05])).toFixed(2))]
        : [blank]
      : [],
    samples,
    oil: chance.between(from, to, decimals),
  };
}
