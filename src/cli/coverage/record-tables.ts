/** What the ± does not cover, and what a record of the same hand adds, as Markdown. */
import { slips } from "./false-alarms";
import { type Plan, simulate, type Simulated } from "./interval";
import { shareDoubted } from "./judged";
import { percent, table } from "./markdown";

/** A hand that repeats well, on a burette with 0.05 mL divisions. */
const usualBench = { blanks: 1, step: 0.05, scatter: 0.03, fromZero: false } as const;
const titresSimulated = [3, 5] as const;
const recordRuns = 5000;
const seed = 18;

type Off = Omit<Partial<Plan>, "titres">;

/** What may be wrong at a bench without anybody typing it. */
export const benches: readonly (readonly [name: string, off: Off])[] = [
  ["nothing", {}],
  ["every titre stopped 0.1 mL late, the blank not", { late: 0.1 }],
  ["the titrant 5 % off its label", { strengthOff: 5 }],
  ["the titrant 10 % off its label", { strengthOff: 10 }],
  ["the scale of the syringe 5 % off", { scaleOff: 5 }],
];

export const onBench = (titres: number, off: Off): Simulated =>
  simulate({ ...usualBench, titres, ...off }, seed, recordRuns);

/** Shares that hold the true value; the last row counts those runs only whose readings came out equal. */
export const uncounted = (): string =>
  table(
    ["what is wrong", ...titresSimulated.map((titres) => `${titres} titres`)],
    [
      ...benches.map(([name, off]) => [
        name,
        ...titresSimulated.map((titres) => percent(onBench(titres, off).held, 0)),
      ]),
      [
        "nothing, and the titres happen to be equal",
        ...titresSimulated.map((titres) => percent(onBench(titres, {}).heldWhenEqual, 0)),
      ],
    ],
  );

const records = [undefined, 5, 10, 20] as const;
const recordName = (earlier: number | undefined): string =>
  earlier === undefined ? "none" : String(earlier);
/** One titre alone has no ± without a record. */
const titresWithRecord = [1, 2, 3] as const;

const hands: readonly (readonly [name: string, plan: Off])[] = [
  ["as before, 0.03 mL", {}],
  ["twice as wide, 0.06 mL", { scatter: 0.06, earlierScatter: 0.03 }],
];

export const withRecord = (): string =>
  table(
    ["today scatters", "titres", ...records.map((earlier) => `record: ${recordName(earlier)}`)],
    hands.flatMap(([name, hand]) =>
      titresWithRecord.map((titres) => [
        name,
        titres,
        ...records.map((earlier) => {
          if (titres === 1 && earlier === undefined) return "no ±";
          const { held, median } = onBench(titres, earlier ? { ...hand, earlier } : hand);
          return `${percent(held)} (${median.toFixed(1)})`;
        }),
      ]),
    ),
  );

const scatters = [0.03, 0.05];

export const doubtedSets = (): string =>
  table(
    ["scatter, mL", ...records.map((earlier) => `record: ${recordName(earlier)}`)],
    scatters.map((scatter) => [
      scatter,
      ...records.map((earlier) =>
        [0, ...slips]
          .map((slip) => {
            const bench = { count: 3, step: usualBench.step, scatter };
            const judged = earlier === undefined ? bench : { ...bench, earlier };
            return percent(shareDoubted(judged, slip, seed));
          })
          .join(" / "),
      ),
    ]),
  );
