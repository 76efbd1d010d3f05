/**
 * Every check that a workbook shows, worked out a second time: figures typed anew from the sources, in
 * plain doubles, none of our functions used. A slip in one digit of either shows, also one that the
 * printed answer would round away. Quantiles are those of R 4.2.2 (qt, with its 17 digits).
 */
import { describe, expect, it } from "vitest";
import { checks } from "../../src/functions/uncertainty/checks";
import { run } from "../../src/functions/uncertainty/checks/check";

const squares = (...parts: number[]): number =>
  Math.sqrt(parts.reduce((total, each) => total + each * each, 0));
const mean = (of: readonly number[]): number => of.reduce((a, b) => a + b, 0) / of.length;
const deviation = (of: readonly number[]): number =>
  squares(...of.map((each) => each - mean(of))) / Math.sqrt(of.length - 1);

/** CIAAW 2021, added up by hand. */
const [hydrogen, carbon, oxygen, sodium, potassium] = [1.008, 12.011, 15.999, 22.98976928, 39.0983];
const oleicAcid = 18 * carbon + 34 * hydrogen + 2 * oxygen;
const phthalate = 8 * carbon + 5 * hydrogen + 4 * oxygen + potassium;
const alkali = potassium + oxygen + hydrogen;
const root3 = Math.sqrt(3);
const root6 = Math.sqrt(6);

/** qnorm(0.975). */
const normal95 = 1.959963984540054;

/** QUAM A2 and A3, in relative parts. */
const byPhthalate = 388.8 / phthalate / 18.64;
const weighed = (Math.SQRT2 * 0.00015) / root3 / 0.3888;
const burette = (limit: number, millilitres: number, celsius: number, divisor: number): number =>
  squares(limit / root6, (millilitres * 0.00021 * celsius) / divisor);
const withoutVolume = [weighed, 0.0005 / root3, 0.0038 / 204.2212];
const inA3 = (repeatability: number): number =>
  0.10139 *
  squares(
    repeatability,
    ...withoutVolume,
    burette(0.03, 15, 4, root3) / 14.89,
    burette(0.03, 19, 4, root3) / 18.64,
    burette(0.02, 15, 4, root3) / 15,
  );

/** GUM 4.4.3. */
const temperatures = [
  96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
  100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
];
/** Tietjen and Moore 1972; ASTM E178. */
const uranium = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
const strengths = [568, 570, 570, 570, 572, 572, 572, 578, 584, 596];

const worked: readonly (readonly [printed: string, value: number])[] = [
  ["1.000", (0.1 * 10 * 282) / (10 * 28.2)],
  ["30.00", (0.25 * 30 * 282) / (10 * 7.05)],
  ["100.0", (1 * 12.5 * 282) / (10 * 3.525)],
  ["1.99", 561 / 282],
  ["1.45", (56.1 * 0.1003 * 5.2) / 20.12],
  ["9.9120", 10 * (1 - 0.0011 * 8)],
  ["204.2223", phthalate],
  ["56.1053", alkali],
  ["0.197", alkali / oleicAcid],
  ["0.144", (sodium + oxygen + hydrogen) / oleicAcid],
  ["0.190", (sodium + oxygen + carbon + 3 * hydrogen) / oleicAcid],
  // 231 cubic inches; imperial: by the act of 1985; the pound of 1959
  ["3.785411784", 231 * 2.54 ** 3 * 1e-3],
  ["4.54609", 4.54609],
  ["0.45359237", 0.45359237],
  ["0.10214", byPhthalate],
  [
    "0.00010",
    byPhthalate * squares(0.0005, ...withoutVolume, burette(0.03, 19, 3, normal95) / 18.64),
  ],
  ["0.00018", inA3(0.001)],
  ["0.00016", inA3(0.001 / root3)],
  ["1.49", deviation(temperatures)],
  ["0.33", deviation(temperatures) / Math.sqrt(20)],
  ["2.3", 4 / root3],
  ["1.6", 4 / root6],
  [
    "16",
    Math.floor(
      squares(25, 9.7, 2.9, 16.6) ** 4 /
        (25 ** 4 / 18 + 9.7 ** 4 / 25.6 + 2.9 ** 4 / 50 + 16.6 ** 4 / 2),
    ),
  ],
  ["2.92", 2.9207816224250989],
  ["15.85", deviation(uranium)],
  ["2.4687", (245.57 - mean(uranium)) / deviation(uranium)],
  ["2.032", 2.031652001549944],
  ["2.39", (596 - mean(strengths)) / deviation(strengths)],
  ["2.290", 2.2899540844795996],
  ["2.482", 2.4820832497153318],
  ["0.455", (0.177 - 0.167) / (0.189 - 0.167)],
  // of two degrees there is a closed form
  ["4.30", 0.95 * Math.sqrt(2 / (0.05 * 1.95))],
  ["2.23", 2.2281388519862744],
  ["0.1", 0.1],
  ["76.1", (0.01 * 1 * (sodium + oleicAcid - hydrogen) * 1000) / 40],
  ["37.4", (0.01 * 0.4 * alkali * 1000) / 6],
  ["5.0", (41 * potassium) / (potassium + oleicAcid - hydrogen)],
  // the product's two factors, 1.645 for 1.96
  ["1.64", 1.645],
  ["2.302", (3 * carbon + 8 * hydrogen + 3 * oxygen) / 40],
  [
    "97.7",
    100 -
      (0.24 * (57 * carbon + 104 * hydrogen + 6 * oxygen)) /
        (3 * carbon + 8 * hydrogen + 3 * oxygen),
  ],
  ["0.1073", (100 * (65812 - 65790)) / (65812 - 45312)],
  ["18.015", (101.325 * 22.414 * (2 * hydrogen + oxygen)) / (8.314462618 * 273.15)],
  ["0.3211", (2 * hydrogen + oxygen) / alkali],
  ["8.0", (22 * 909 * 0.1) / (24.9 * 10)],
  // slopes 0.39, 0.83 and 0.24 V/mL, so 4.4 at 24.30 mL and -5.9 at 24.40
  ["24.34", 24.3 + (0.1 * 4.4) / (4.4 + 5.9)],
];

describe("a check that a workbook shows", () => {
  it("prints the figure of its source", () => {
    expect(checks.map(({ expected }) => expected)).toEqual(worked.map(([printed]) => printed));
  });

  it.each(checks.map((check, place) => [check.check, check, worked[place]?.[1] ?? 0] as const))(
    "is worked out from the figures of its source: %s",
    (_, check, value) => {
      expect(Math.abs(check.compute() / value - 1)).toBeLessThanOrEqual(1e-12);
    },
  );

  const agrees = (expected: string, ours: number, within?: number) =>
    run({
      check: "",
      source: "byHand",
      expected,
      ...(within ? { within } : {}),
      compute: () => ours,
    }).agrees;

  it("agrees where it rounds to what is printed, or lies within what its row states", () => {
    expect([16.4, 16.5, 15.5, 15.4].map((ours) => agrees("16", ours))).toEqual([
      true,
      false,
      true,
      false,
    ]);
    expect([1.994, 1.995, 1.985, 1.9849].map((ours) => agrees("1.99", ours))).toEqual([
      true,
      false,
      true,
      false,
    ]);
    // by hand: a ten-thousandth of 2 is 0.0002
    expect([2.0002, 1.9998, 2.00021].map((ours) => agrees("2", ours, 1e-4))).toEqual([
      true,
      true,
      false,
    ]);
  });
});
