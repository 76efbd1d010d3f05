import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figure } from "../outcome";

/** Area under a curve by Simpson's rule, many panels: nothing of the core's series. */
function area(of: (x: number) => number, from: number, to: number, panels = 4000): number {
  const step = (to - from) / panels;
  let sum = of(from) + of(to);
  for (let place = 1; place < panels; place += 1) {
    sum += (place % 2 ? 4 : 2) * of(from + place * step);
  }
  return (sum * step) / 3;
}

/** Share of Student's distribution beyond +-t: with t = sqrt(nu) tan(a) its density is cos^(nu-1) a. */
const beyondT = (t: number, nu: number): number => {
  const density = (a: number): number => Math.cos(a) ** (nu - 1);
  const edge = Math.atan(t / Math.sqrt(nu));
  return area(density, edge, Math.PI / 2) / area(density, 0, Math.PI / 2);
};

/** Share of F beyond f: with x = sin^2 b the density is sin^(nu1-1) b cos^(nu2-1) b. */
const beyondF = (f: number, nu1: number, nu2: number): number => {
  const density = (b: number): number => Math.sin(b) ** (nu1 - 1) * Math.cos(b) ** (nu2 - 1);
  const edge = Math.atan(Math.sqrt((nu1 * f) / nu2));
  return area(density, edge, Math.PI / 2) / area(density, 0, Math.PI / 2);
};

const known = new Map<number, number>();

function t95(nu: number): number {
  const found = known.get(nu) ?? halved(nu);
  known.set(nu, found);
  return found;
}

function halved(nu: number): number {
  let [low, high] = [1, 20];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (beyondT(middle, nu) > 0.05) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

interface Plain {
  titres: number[];
  blanks: number[];
  masses: number[];
  titreStep: number;
  massStep: number;
  titrant: number;
  sample: number;
  burette: number;
  usual: { scatter: number; freedom: number } | undefined;
}

const average = (list: readonly number[]): number =>
  list.reduce((sum, each) => sum + each, 0) / list.length;
const squares = (list: readonly number[]): number =>
  list.reduce((sum, each) => sum + (each - average(list)) ** 2, 0);

/** The relative half-width as the method is written down, in plain doubles. */
function relative(plain: Plain): number {
  const { titres, blanks, masses, usual } = plain;
  const blank = blanks.length ? average(blanks) : 0;
  const x = titres.map((titre, place) => (titre - blank) / (masses[place] ?? masses[0] ?? 1));
  const m = average(masses);
  const V = m * average(x);
  const n = titres.length;
  const k = blanks.length;
  let nu = n - 1 + Math.max(0, k - 1);
  let sum = m * m * squares(x) + squares(blanks);
  if (usual) {
    const isMore = nu >= 1 && beyondF(sum / nu / usual.scatter ** 2, nu, usual.freedom) < 0.05;
    if (!isMore) {
      sum += usual.freedom * usual.scatter ** 2;
      nu += usual.freedom;
    }
  }
  const scatter = (Math.sqrt(sum / nu) * Math.sqrt(1 / n + (k ? 1 / k : 0))) / V;
  const readings = k ? 2 : 1;
  const rest =
    (readings * plain.titreStep ** 2) / 6 / V ** 2 +
    plain.massStep ** 2 / (6 * masses.length * m * m) +
    ((plain.titrant / 100) ** 2 + (plain.sample / 100) ** 2 + (plain.burette / 100) ** 2) / 3;
  return Math.sqrt((t95(nu) * scatter) ** 2 + 1.959963984540054 ** 2 * rest);
}

const hundredths = (from: number, to: number) =>
  fc.integer({ min: from, max: to }).map((n) => n / 100);

const anyTitration: fc.Arbitrary<Plain> = fc
  .record({
    middle: hundredths(150, 900),
    off: fc.array(fc.integer({ min: -12, max: 12 }), { minLength: 1, maxLength: 5 }),
    blanks: fc.array(hundredths(5, 30), { minLength: 1, maxLength: 3 }),
    mass: hundredths(400, 2000),
    hasOwn: fc.boolean(),
    titreStep: fc.constantFrom(0.01, 0.02, 0.05, 0.1),
    massStep: fc.constantFrom(0.001, 0.01, 0.1),
    titrant: fc.constantFrom(0, 0.2, 1, 5),
    sample: fc.constantFrom(0, 2, 5),
    burette: fc.constantFrom(0, 0.5, 5),
    usual: fc.option(
      fc.record({
        scatter: fc.integer({ min: 10, max: 80 }).map((n) => n / 1000),
        freedom: fc.integer({ min: 1, max: 60 }),
      }),
      { nil: undefined },
    ),
  })
  .map(({ middle, off, mass, hasOwn, usual, ...rest }) => ({
    ...rest,
    usual: off.length === 1 ? (usual ?? { scatter: 0.031, freedom: 20 }) : usual,
    titres: off.map((each) => Number((middle + each / 100).toFixed(2))),
    masses: hasOwn && off.length > 1 ? off.map((_, place) => mass + place / 10) : [mass],
  }));

const orLeftOut = (percent: number): number | undefined => (percent === 0 ? undefined : percent);

describe("the ± of a titration", () => {
  const given = (plain: Plain) => [
    [plain.titres],
    [plain.blanks],
    0.1,
    [plain.masses],
    plain.titreStep,
    plain.massStep,
    orLeftOut(plain.titrant),
    orLeftOut(plain.sample),
  ];
  const beside = ({ burette, usual }: Plain) => [
    orLeftOut(burette),
    usual?.scatter,
    usual?.freedom,
  ];

  it("is what its method makes of it in plain doubles, with and without a record", () => {
    fc.assert(
      fc.property(anyTitration, (plain) => {
        const ffa = figure("FFAUNCERTAINTY", ...given(plain), "oleic", ...beside(plain));
        const bench = given(plain).slice(0, 4);
        const acidValue = figure("MEANACIDVALUE", ...bench);
        const wanted = relative(plain) * ((acidValue * 282) / 561);
        expect(Math.abs(ffa / wanted - 1), JSON.stringify(plain)).toBeLessThan(1e-7);
        const ofAcidValue = figure("ACIDVALUEUNCERTAINTY", ...given(plain), ...beside(plain));
        expect(Math.abs(ofAcidValue / ((ffa * 561) / 282) - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 60 },
    );
  });

  it("of a strength set against KHP is the same part, in percent, the purity counted as the sample", () => {
    fc.assert(
      fc.property(anyTitration, fc.constantFrom(0.05, 0.2, 2), (plain, purity) => {
        const khp = plain.masses.map((mass) => mass / 20);
        const found = figure(
          "KHPUNCERTAINTY",
          [khp],
          [plain.titres],
          [plain.blanks],
          plain.massStep,
          plain.titreStep,
          purity,
          ...beside(plain),
        );
        const wanted = 100 * relative({ ...plain, masses: khp, titrant: 0, sample: purity });
        expect(Math.abs(found / wanted - 1), JSON.stringify(plain)).toBeLessThan(1e-7);
      }),
      { numRuns: 60 },
    );
  });
});
