/**
 * A figure that a row starts from and that is ten times off from the other rows': where the row comes
 * out wrong it may be the slip, and not the result. Nobody is told to add lye on its word.
 */
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import { type RoleId, roleOf } from "../../recognising/roles";
import type { Readings } from "../reading/readings";
import type { CheckedRow } from "./checked";

interface Input {
  readonly role: RoleId;
  /** The same in all rows of most logbooks; what differs from row to row has to be proven. */
  readonly isSteady: boolean;
  readonly of: (r: Readings) => number | undefined;
  readonly times: (r: Readings, factor: number) => Readings;
}

const scaled = (factor: number) => (each: number | undefined) =>
  each === undefined ? undefined : each * factor;
const multiplied = (all: readonly (number | undefined)[], factor: number) =>
  all.map(scaled(factor));
const filled = (all: readonly (number | undefined)[]): number[] =>
  all.filter((each) => each !== undefined);
const greatest = (all: readonly (number | undefined)[]): number | undefined =>
  filled(all).length === 0 ? undefined : Math.max(...filled(all));

const inputs: readonly Input[] = [
  {
    role: "sampleVolume",
    isSteady: true,
    of: ({ volume }) => volume,
    times: (r, factor) => ({ ...r, volume: scaled(factor)(r.volume) }),
  },
  {
    role: "sampleMass",
    isSteady: true,
    of: ({ masses }) => greatest(masses),
    times: (r, factor) => ({ ...r, masses: multiplied(r.masses, factor) }),
  },
  {
    role: "molarity",
    isSteady: true,
    of: ({ molarity }) => molarity,
    times: (r, factor) => ({ ...r, molarity: scaled(factor)(r.molarity) }),
  },
  {
    role: "strength",
    isSteady: true,
    of: ({ strength }) => strength,
    times: (r, factor) => ({ ...r, strength: scaled(factor)(r.strength) }),
  },
  {
    role: "baseCharge",
    isSteady: true,
    of: ({ charge }) => charge?.value,
    times: (r, factor) => ({
      ...r,
      charge: r.charge && { ...r.charge, value: r.charge.value * factor },
    }),
  },
  {
    role: "blank",
    isSteady: false,
    of: ({ blanks }) => greatest(blanks ?? []),
    times: (r, factor) => ({ ...r, blanks: r.blanks?.map((each) => each * factor) }),
  },
  {
    role: "titre",
    isSteady: false,
    of: ({ titres }) => greatest(titres),
    times: (r, factor) => ({ ...r, titres: multiplied(r.titres, factor) }),
  },
  {
    role: "oilAmount",
    isSteady: false,
    of: ({ amount }) => amount?.value,
    times: (r, factor) => ({
      ...r,
      amount: r.amount && { ...r.amount, value: r.amount.value * factor },
    }),
  },
];

const leastRows = 3;
const middle = (numbers: readonly number[]): number =>
  [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? 0;

/** A steady figure without its slip lies within this factor of the other rows'. */
const near = 1.25;
const isNear = (ratio: number): boolean => ratio < near && ratio > 1 / near;

const shown = (value: number): string => String(Number(value.toPrecision(3)));

export class OddInputs {
  private readonly usual = new Map<Input, number>();

  constructor(
    private readonly mapping: LogbookMapping,
    rows: readonly Readings[],
  ) {
    for (const input of inputs) {
      const all = filled(rows.map(input.of)).filter((each) => each > 0);
      const of = middle(all);
      const isKept = all.filter((each) => isNear(each / of)).length >= 0.75 * all.length;
      if (all.length >= leastRows && (isKept || !input.isSteady)) this.usual.set(input, of);
    }
  }

  /** The row with what is to be said of it. @param check the row read another way */
  look(checked: CheckedRow, given: Readings, check: (row: Readings) => CheckedRow): CheckedRow {
    if (checked.findings.length === 0) return checked;
    for (const [input, usual] of this.usual) {
      const value = input.of(given);
      if (value === undefined || value <= 0) continue;
      const power = Math.round(Math.log10(value / usual));
      const factor = 10 ** -power;
      if (power === 0 || (input.isSteady && !isNear((value * factor) / usual))) continue;
      const isProven = check(input.times(given, factor)).findings.length === 0;
      if (!isProven && !input.isSteady) continue;
      const oddInput = this.words(input, value, usual);
      return {
        ...checked,
        findings: checked.findings.map((each) => ({ ...each, oddInput, effect: undefined })),
      };
    }
    return checked;
  }

  private words({ role }: Input, value: number, usual: number): string {
    const column = columnOf(this.mapping, role);
    const unit = column?.unit === undefined ? "" : ` ${column.unit}`;
    const name = column?.heading ? column.heading : roleOf(role).words;
    return `The ${shown(value)}${unit} in ${name} may be the slip, and not this figure: other rows have about ${shown(usual)}${unit}. Settle that before anything else.`;
  }
}
