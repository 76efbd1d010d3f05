/** Arguments to ask every function about: plain ones by chance, seeded, and every odd cell there is. */
import { randomFrom } from "../../../src/cli/coverage/random";
import type { NamedArgument, WorksheetFunction } from "../../../src/functions/define";
import { isWide } from "../../is-wide";
import type { RawCell } from "./raw-book";
import type { Given } from "./written";

/** From, to and decimals of plain figures, by the argument's name. */
const usual: Record<string, readonly [number, number, number]> = {
  correctedTitre: [0.3, 25, 2],
  molarity: [0.01, 0.5, 4],
  sampleMass: [2, 30, 3],
  acidValue: [0.1, 14, 3],
  ffaPercent: [0.05, 6, 2],
  titrantStrength: [0.5, 40, 2],
  sampleVolume: [1, 30, 1],
  mass: [0.5, 60, 3],
  volume: [0.5, 50, 2],
  assayPercent: [20, 100, 1],
  khpMass: [0.2, 5, 4],
  purityPercent: [95, 100, 2],
  titre: [0.5, 40, 2],
  readAt: [-5, 40, 1],
  setAt: [10, 30, 1],
  expectedFfaPercent: [0.2, 15, 2],
  targetTitre: [1, 40, 1],
  temperature: [-5, 80, 1],
  amount: [1, 5000, 1],
  gramsPerLitre: [2, 12, 2],
  volumePercent: [10, 40, 1],
  limit: [0.02, 0.3, 2],
  step: [0.01, 0.1, 2],
  confidencePercent: [50, 99.9, 1],
  standardDeviation: [0.01, 0.3, 3],
  halfWidth: [0.03, 0.5, 3],
  titreStep: [0.01, 0.1, 2],
  massStep: [0.001, 0.1, 3],
  molarityPercent: [0.1, 5, 2],
  samplePercent: [0.1, 8, 2],
  oilMass: [1, 900, 2],
  baseCharge: [0.2, 1.5, 3],
  limitFfaPercent: [2, 20, 1],
  molarRatio: [3, 12, 2],
  acidValueA: [1, 30, 2],
  acidValueB: [1, 30, 2],
  targetAcidValue: [1, 30, 2],
  waterPercent: [0.01, 0.2, 3],
  acidAssayPercent: [90, 98, 1],
  oil: [0.88, 0.95, 4],
  fattyAcid: [200, 340, 2],
  titrantSolvent: [0.0001, 0.002, 5],
  burettePercent: [0.1, 6, 2],
  usualScatter: [0.01, 0.08, 3],
  usualFreedom: [1, 60, 0],
  day: [45600, 45900, 0],
  baseline: [3, 9, 0],
  weight: [0.05, 1, 2],
  value: [0.2, 0.8, 3],
  uncertainty: [0.005, 0.2, 4],
  soap: [1, 8000, 2],
  catalyst: [0.1, 300, 2],
  totalGlycerol: [0.1, 3, 3],
  freeGlycerol: [0.005, 0.15, 3],
  dishMass: [20, 40, 3],
  massBefore: [44, 60, 3],
  massAfter: [38, 45, 3],
  pressureRise: [1, 90, 2],
  gasSpace: [0.1, 2, 3],
  methanolMass: [1, 200, 2],
  methanolWaterPercent: [0.01, 4, 2],
  lyeMass: [50, 4000, 1],
  methanolVolume: [2, 300, 1],
  trialLyeMass: [2, 50, 1],
  trialMethanolVolume: [0.05, 1, 3],
  trialRise: [3, 40, 1],
};

/** Where one name means two things. */
const usualOf = (id: string, name: string): readonly [number, number, number] | undefined => {
  if (id === "KHPUNCERTAINTY" && name === "purityPercent") return [0.01, 2, 2];
  return id === "AGAINSTLIMIT" && name === "limit" ? [0.3, 0.7, 2] : usual[name];
};

/** Lists: how far apart, and how many decimals. */
const lists: Record<string, readonly [from: number, to: number, apart: number, decimals: number]> =
  {
    titres: [1, 20, 0.04, 2],
    blanks: [0.05, 0.4, 0.02, 2],
    readings: [1, 20, 0.05, 2],
    sampleMasses: [4, 20, 0.2, 3],
    acidValues: [0.5, 14, 2, 2],
    masses: [5, 400, 30, 1],
    amounts: [5, 400, 60, 1],
    khpMasses: [0.3, 0.8, 0.01, 4],
    dates: [45600, 45800, 25, 0],
    strengths: [0.05, 0.2, 0.002, 4],
    values: [0.05, 3, 0.04, 2],
    volumes: [5, 15, 4, 2],
    titreSets: [1, 20, 0.05, 2],
    blankSets: [0.05, 0.4, 0.02, 2],
    sampleMassSets: [4, 20, 0.2, 3],
  };

/** Where one name means two things. */
const listOf = (id: string, name: string): readonly [number, number, number, number] =>
  id === "GLYCEROL" && name === "blanks" ? [24, 40, 0.04, 2] : (lists[name] ?? [1, 2, 0.1, 2]);

/** One titration a row: all of them have as many rows. */
const inRows = new Set(["titreSets", "blankSets", "sampleMassSets"]);

const pairs: readonly (readonly [string, string])[] = [
  ["titres", "sampleMasses"],
  ["readings", "sampleMasses"],
  ["acidValues", "masses"],
  ["titres", "khpMasses"],
  ["dates", "strengths"],
  ["volumes", "readings"],
];

/** Cells in which nothing is typed. */
const gaps: readonly RawCell[] = [null, "", " ", 0, "\u00a0\t", { formula: '""' }];

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** A seeded source of calls. */
class Source {
  readonly #random;
  constructor(seed: number) {
    this.#random = randomFrom(seed);
  }
  chance = (share: number): boolean => this.#random.uniform() < share;
  pick = <T>(from: readonly T[]): T => from[Math.floor(this.#random.uniform() * from.length)] as T;
  between = (from: number, to: number, decimals: number): number =>
    rounded(from + this.#random.uniform() * (to - from), decimals);
  around = (middle: number, apart: number, decimals: number): number =>
    rounded(Math.max(middle / 4, middle + apart * this.#random.normal()), decimals);
}

const oddCase = (word: string, source: Source): string =>
  source.pick([
    word,
    word.toUpperCase(),
    ` ${word} `,
    `\u00a0${word.charAt(0).toUpperCase()}${word.slice(1)}`,
  ]);

function oneValue(id: string, argument: NamedArgument, source: Source): string | number {
  const { name, words } = argument;
  const figures = usualOf(id, name);
  if (words && (!figures || source.chance(0.7))) return oddCase(source.pick(words), source);
  if (!figures) throw new Error(`no usual figures for ${name}`);
  return source.between(...figures);
}

/** What can stand in an array constant: there is no empty place in one. */
const asConstant = (cell: RawCell): string | number | boolean =>
  cell === null || typeof cell === "object" ? "" : cell;

/** A row, a column, or a block of two rows. */
function shaped(cells: readonly RawCell[], shape: number): RawCell[][] {
  if (shape === 1) return cells.map((cell) => [cell]);
  if (shape === 2 && cells.length % 2 === 0 && cells.length > 2) {
    return [cells.slice(0, cells.length / 2), cells.slice(cells.length / 2)];
  }
  return [[...cells]];
}

/** Titrations of up to four readings, each with gaps, about its own middle; one word, one mass. */
function randomSets(name: string, rows: number, columns: number, source: Source): RawCell[][] {
  const [from, to, apart, decimals] = lists[name] ?? [1, 2, 0.1, 2];
  return Array.from({ length: rows }, () => {
    if (name === "blankSets" && source.chance(0.15)) {
      return Array.from({ length: columns }, (_, place) =>
        place === 0 ? oddCase("neutralised", source) : source.pick(gaps),
      );
    }
    const middle = source.between(from, to, decimals);
    const isOne = name === "sampleMassSets" && source.chance(0.3);
    return Array.from({ length: columns }, (_, place): RawCell =>
      isOne && place > 0 ? null : source.around(middle, apart, decimals),
    );
  });
}

/** The same cells left empty in titres and masses, so that they pair. */
const withGaps = (cells: RawCell[][], holes: readonly (readonly boolean[])[]): RawCell[][] =>
  cells.map((row, down) => row.map((cell, across) => (holes[down]?.[across] ? "" : cell)));

function randomRecord(entry: WorksheetFunction, source: Source): Given[] {
  const [rows, columns] = [source.pick([1, 2, 3, 5]), source.pick([1, 2, 3, 3, 4])];
  const holes = Array.from({ length: rows }, () =>
    Array.from({ length: columns }, (_, place) => place > 0 && source.chance(0.2)),
  );
  return entry.arguments.map((argument): Given => {
    const { name, list, whenLeftOut } = argument;
    if (whenLeftOut !== undefined && source.chance(0.4)) return undefined;
    if (!list) return { cells: [[oneValue(entry.id, argument, source)]] };
    const isBlank = name === "blankSets";
    const cells = randomSets(name, rows, isBlank ? source.pick([1, 2]) : columns, source);
    const given = isBlank ? cells : withGaps(cells, holes);
    return source.chance(0.15)
      ? { constants: given.map((row) => row.map(asConstant)) }
      : { cells: given };
  });
}

/** A probe's curve as a bench writes it: an S in steps of all widths, rising or falling, with gaps. */
function randomCurve(source: Source): Given[] {
  const count = source.pick([1, 2, 3, 5, 6, 7, 9, 12, 16]);
  const end = source.between(2, 20, 2);
  const [height, start] = source.pick([
    [6, 4],
    [-300, 180],
    [2, 7],
  ]) as [number, number];
  let volume = source.between(0.1, 1, 2);
  const volumes: RawCell[] = [];
  const readings: RawCell[] = [];
  for (let point = 0; point < count; point += 1) {
    const slow = Math.abs(volume - end) > 1 ? [0.5, 1, 2] : [0.05, 0.1, 0.2];
    volumes.push(source.chance(0.06) ? source.pick(gaps) : rounded(volume, 2));
    const shown = start + height / (1 + Math.exp((end - volume) * 4)) + volume * (height / 40);
    const decimals = Math.abs(height) > 100 ? 1 : 2;
    readings.push(source.chance(0.06) ? source.pick(gaps) : rounded(shown, decimals));
    volume += source.pick(slow) * (source.chance(0.02) ? -1 : 1);
  }
  const shape = source.pick([0, 1, 1, 1, 2]);
  const both = [volumes, readings].map((cells) => shaped(cells, shape));
  return source.chance(0.15)
    ? both.map((cells) => ({ constants: cells.map((row) => row.map(asConstant)) }))
    : both.map((cells) => ({ cells }));
}

function randomCall(entry: WorksheetFunction, source: Source): Given[] {
  if (entry.arguments.some(({ name }) => inRows.has(name))) return randomRecord(entry, source);
  if (entry.arguments.some(({ name }) => name === "volumes")) return randomCurve(source);
  const isSeries = entry.arguments.some(({ name }) => name === "values");
  const count = source.pick(isSeries ? [4, 5, 6, 8, 12, 16, 20] : [1, 2, 3, 3, 3, 4, 4, 6, 8]);
  const shape = source.pick([0, 0, 1, 2]);
  const isGap = Array.from({ length: count }, () => count > 2 && source.chance(0.15));
  const names = entry.arguments.map(({ name }) => name);
  const isPaired = (name: string) =>
    pairs.some((pair) => pair.includes(name) && pair.every((each) => names.includes(each)));
  const rise = isSeries && source.chance(0.3) ? source.pick([-0.03, 0.03]) : 0;
  const slip = source.chance(0.25) ? Math.floor(count * source.between(0, 0.999, 3)) : -1;
  return entry.arguments.map((argument): Given => {
    const { name, list, whenLeftOut } = argument;
    if (whenLeftOut !== undefined && source.chance(0.4)) return undefined;
    if (!list) {
      const value = oneValue(entry.id, argument, source);
      return source.chance(0.3) ? { literal: value } : { cells: [[value]] };
    }
    const [from, to, apart, decimals] = listOf(entry.id, name);
    const middle = source.between(from, to, decimals);
    if (name === "blanks" && source.chance(0.2))
      return { cells: [[oddCase("neutralised", source)]] };
    const isSingle = (name === "sampleMasses" || name === "khpMasses") && source.chance(0.4);
    const size = isSingle
      ? 1
      : isPaired(name) || name === "readings" || isSeries
        ? count
        : source.pick([1, 2, 3]);
    const figures = Array.from({ length: size }, (_, place): RawCell => {
      if (!isSingle && size > 1 && isGap[place]) return source.pick(gaps);
      const far = place === slip && (name === "readings" || isSeries) ? apart * 12 : 0;
      return source.around(middle, apart, decimals) + far + rise * place;
    }).map((cell) => (typeof cell === "number" ? rounded(cell, decimals) : cell));
    const cells = shaped(figures, size === count ? shape : 0);
    if (!source.chance(0.2)) return { cells };
    return { constants: cells.map((row) => row.map(asConstant)) };
  });
}

const errors: readonly RawCell[] = [{ formula: "NA()" }, { formula: "1/0" }];

/** Every odd thing for one cell of an argument. */
function oddCells(argument: NamedArgument): RawCell[] {
  const { limits, words = [] } = argument;
  const figures = limits
    ? [
        Number(limits.from),
        limits.fromIncluded ? Number(limits.from) - 0.01 : Number(limits.from) + 1e-6,
        Number(limits.to),
        Number(limits.to) * 1.000001,
        Number(limits.to) * 1.001,
      ]
    : [7];
  const spelt = words.flatMap((word) => [
    word.toUpperCase(),
    ` ${word} `,
    word.replace(/^(.)/, "$1 "),
    word.replaceAll(" ", "  "),
  ]);
  return [
    ...gaps,
    ...errors,
    ...figures,
    ...spelt,
    "2.45",
    "abc",
    "*",
    "gallon",
    "constructor",
    true,
    false,
    -1,
    1e-9,
  ];
}

type Cells = readonly (readonly RawCell[])[];

const cellsOf = (value: unknown): Cells =>
  Array.isArray(value) ? (value as Cells) : [[value as RawCell]];

/** What is written into a formula rather than into a cell. */
const asLiteral = (cell: RawCell): Given[] =>
  typeof cell === "number" || typeof cell === "string" || typeof cell === "boolean"
    ? [{ literal: cell }]
    : [];

/** Good arguments but for one, which is everything in turn. */
function oddCalls(entry: WorksheetFunction, good: readonly unknown[]): Given[][] {
  const plain = good.map((value): Given => ({ cells: cellsOf(value) }));
  const literals = good.map((value): Given =>
    Array.isArray(value) ? { cells: cellsOf(value) } : { literal: value as string | number },
  );
  const but = (place: number, given: Given, from = plain): Given[] =>
    from.map((each, index) => (index === place ? given : each));
  return entry.arguments.flatMap((argument, place) => {
    const cells = cellsOf(good[place]);
    const odd = oddCells(argument);
    const first = (cell: RawCell): Cells => [[cell, ...(cells[0]?.slice(1) ?? [])]];
    return [
      but(place, undefined),
      but(place, { cells: [[cells[0]?.[0] ?? null, cells[0]?.[0] ?? null]] }),
      but(place, { cells: [[null, ""]] }),
      ...odd.map((cell) => but(place, { cells: argument.list ? first(cell) : [[cell]] })),
      ...(argument.list ? odd.map((cell) => but(place, { cells: [[cell]] })) : []),
      ...odd.flatMap((cell) => asLiteral(cell).map((given) => but(place, given, literals))),
    ];
  });
}

/** Acid values whose % FFA as oleic is right at an edge, and a little to either side. */
const atEdges = [0.5, 1, 3, 5, 15].flatMap((percent) => {
  const value = Number(((percent * 561) / 282).toPrecision(15));
  return [value, value * (1 + 1e-12), value * (1 - 1e-12), value * 1.00004, value * 0.99994];
});

const one = (cell: RawCell): Given => ({ cells: [[cell]] });
const row = (...cells: RawCell[]): Given => ({ cells: [cells] });
const column = (...cells: RawCell[]): Given => ({ cells: cells.map((cell) => [cell]) });
const block: Given = {
  cells: [
    [2.4, 2.5],
    [2.45, 2.44],
  ],
};
const shapes: (readonly [Given, Given])[] = [
  [row(2.4, 2.5, 2.45), column(7, 7.1, 7.2)],
  [block, row(7, 7.1, 7.2, 7.3)],
  [block, block],
  [row(2.4, 2.5), row(7, 7.1, 7.2)],
  [row(2.4, 2.5), row(7, 7.1, null, "")],
  [row(2.4, 2.5, 2.6, null), row(7, 7.1, 7.2)],
  [row(2.4, null, 2.6), row(7, 7.1, 7.2)],
  [row(2.4, 2.5, 2.6), row(7, " ", 7.2)],
  [row(2.4, 2.5, 2.6), row(null, 0, "")],
  [row(2, 4, 3), row(5, 10, 7.5)],
];

/** Readings that agree, lie apart, or hold one that stands alone: by themselves and by a record. */
const judged: Given[][] = [
  [1.55, 1.6, 1.58],
  [1.55, 16, 1.58],
  [1.55, 1.6, 158, 1.57],
  [15.5, 1.56, null, 15.6],
  [15.5, 15.6, 0.156],
  [2.3, 2.35, 4],
  [3.4, 2.5, 2.45],
  [2.3, 2.35, 2.9],
  [2.3, 2.35, 2.4, 2.8],
  [2.3, 2.45],
  [2.3, 2.46],
  [2, 2.5, 3],
  [2.3, 2.31, 2.32, 2.9],
  [2.3, 2.31, 2.9, 3.3],
  [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57],
  [2.3001, 2.3503, 4],
  [2.3, 2.3, 2.3, 2.3, 2.3, 2.3, 2.3, 2.3, 2.3, 2.3, 2.3, 2.9],
].flatMap((readings): Given[][] => [
  [row(...readings)],
  [row(...readings), one(0.05)],
  [column(...readings), one(0.05), undefined, undefined, undefined, one(0.031), one(20)] as Given[],
  [
    row(...readings),
    undefined,
    one(99),
    column(...readings.map((each) => each && Number((each * 3).toFixed(2)))),
    row(0.15),
    one(0.05),
    one(4),
  ] as Given[],
]);

/** Shapes that do not fit each other, and values right at an edge. */
const special: Record<string, Given[][]> = {
  CONCORDANT: [
    [[2.25, 2.35], 0.1],
    [[2.2, 2.3], 0.1],
    [[2.25, 2.36], 0.1],
    [[0.3, 0.1, 0.2], 0.2],
    [[1000, 999.9], 0.1],
    [[0, 2.25, 2.35], 0.1],
  ].map(([readings, limit]) => [{ cells: [readings as number[]] }, { cells: [[limit as number]] }]),
  CORRECTED: [
    [[0.3], [0.1, 0.5]],
    [[0.15], [0.1, 0.2]],
    [[0.3], [0.1, 0.2, 0.6]],
    [[2.4, 0.2], [0.2]],
    [[2.4], [0.2, "neutralised"]],
    [[2.4], ["", "NEUTRALIZED ", 0]],
  ].map(([titres, blanks]) => [{ cells: [titres as RawCell[]] }, { cells: [blanks as RawCell[]] }]),
  MEANACIDVALUE: shapes.map(([titres, masses]) => [titres, row(0.15), one(0.1), masses]),
  EACHACIDVALUE: shapes.map(([titres, masses]) => [titres, row(0.15), one(0.1), masses]),
  OUTLIERS: [
    ...shapes.map(([readings, masses]) => [readings, undefined, undefined, masses]),
    ...judged,
  ],
  VERDICT: [
    ...shapes.map(([readings, masses]) => [readings, undefined, undefined, masses]),
    ...[
      [2.4],
      [2.4, 2.4],
      [2.4, 2.45],
      [2, 3],
      [2.3, 2.3, 2.3],
      [2.3, 2.3, 2.3, 2.3],
      [2.3, 2.31, 2.32, 2.9],
      [2.3, 2.30001, 2.9],
      [2.345678912, 2.31, 2.4],
      [1 / 3, 2 / 3, 0.5],
    ].map((readings) => [row(...readings)]),
    // in exact proportion to their masses, and so nearly that the last digit shows nothing
    ...[
      [2, 4, 3],
      [2, 4, 3.001],
    ].map((readings) => [column(...readings), undefined, undefined, column(10, 20, 15)]),
    // titres that agree by the record, with blanks that scatter little, more, and too much
    ...[[0.1], [0.1, 0.12], [0.1, 0.26], [0.1, 0.6], ["neutralised"]].flatMap((blanks) =>
      [undefined, column(10, 10.1, 9.9)].map((masses) => [
        column(2.4, 2.5, 2.35),
        one(0.05),
        undefined,
        masses,
        row(...blanks),
        one(0.05),
        one(20),
      ]),
    ),
    ...judged,
  ],
  SPREAD: [
    ...shapes.map(([readings, masses]) => [readings, undefined, undefined, masses]),
    ...judged,
  ],
  FFAUNCERTAINTY: shapes.map(([titres, masses]) => [
    titres,
    row(0.15, 0.16),
    one(0.1),
    masses,
    one(0.05),
    one(0.01),
  ]),
  BLENDEDACIDVALUE: shapes.map(([values, masses]) => [values, masses]),
  CATALYST: atEdges.map((value) => [one(100), one(value), one("KOH"), one(90), one(0.7)]),
  ROUTE: atEdges.flatMap((value) => [
    [one(value)],
    [one(value), one(0.06), one(1)],
    [one(value), undefined, one(20)],
  ]),
  BATCH: atEdges.map((value) => [one(100), one(value), one("NaOCH3"), one(30), one(0.7)]),
  AGAINSTLIMIT: [
    [0.479, 0.025, 0.5],
    [0.3, 0.2, 0.5],
    [0.5, 0.02, 0.5],
    [0.5, 2, 0.5],
    [5000, 20, 0.5],
    [0.664, 0.196, 0.5],
    [0.3355, 0.196, 0.5],
    [0.6645, 0.196, 0.5],
  ].map((figures) => figures.map(one)),
  GLYCEROL: [[row(23.7, 25), row(25, 25.1), one(0.01), one(0.125)]],
  LOSSONHEATING: [
    [45.3, 45.3, 45.2],
    [45.3, 65.8, 65.8],
    [45.3, 65.8, 45.3],
    [45.3, 65.8, 45.2],
  ].map((figures) => figures.map(one)),
  CONVERSION: [
    [0.2, 0.2],
    [0.1, 0.2],
    [8, 0.1],
    [12, 0.1],
  ].map((figures) => figures.map(one)),
  FUELMETAL: [
    [one(20), one("KOH"), one(" NONE ")],
    [one(20), one("KOH"), one("non")],
  ],
  ENDPOINT: [
    [
      row(24, 24.1, 24.2, 24.3, 24.4, 24.5, 24.6),
      row(0.174, 0.183, 0.194, 0.233, 0.316, 0.34, 0.351),
    ],
    // two steps as steep as each other, none at all, too near either end
    [row(1, 2, 3, 4, 5, 6, 7), row(1, 2, 3, 5, 7, 8, 9)],
    [row(1, 2, 3, 4, 5, 6), row(7, 7, 7, 7, 7, 7)],
    [row(1, 2, 3, 4, 5, 6), row(1, 2, 9, 10, 11, 12)],
    [row(1, 2, 3, 4, 5, 6), row(1, 2, 3, 4, 9, 10)],
    [row(1, 2, 3, 3, 5, 6), row(1, 2, 3, 6, 7, 8)],
    [row(1, 2, 3, 4, 5, 6, 7), column(1, 2, 3, 5, 6, 7)],
  ],
  WHATIF: [
    [row(100, 200), one("kg"), row(...atEdges), one("KOH"), one(90), one(0.7)],
    [row(100, null, 200), one("l"), column(1, "", 12), one("KOH"), one(90), one(0.7)],
  ],
};

export const callsOf = (entry: WorksheetFunction, good: readonly unknown[]): Given[][] => {
  const source = new Source(7 + entry.id.length + entry.id.charCodeAt(0) * 31);
  const byChance = entry.arguments.length === 0 ? 1 : isWide ? 220 : 70;
  return [
    ...Array.from({ length: byChance }, () => randomCall(entry, source)),
    ...oddCalls(entry, good),
    ...(special[entry.id] ?? []),
  ];
};
