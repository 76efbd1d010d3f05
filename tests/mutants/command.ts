/**
 * `npm run mutants -- --count 150 --seed 1`: does the unit suite notice when one thing in core or
 * functions is not as it should be? So many mutations are drawn by the seed, each is tried alone; what
 * is noticed by no test is listed. `--only 17,23` tries some of them again.
 */
import { parseArgs } from "node:util";
import { Chance } from "../endurance/chance";
import { filesUnder } from "../rules/sources-of";
import { isRefused } from "./compiled";
import { type Mutation, mutationsOf } from "./mutations";
import { MutatedSuite, unending } from "./run";

const { values } = parseArgs({
  options: {
    count: { type: "string", default: "150" },
    seed: { type: "string", default: "1" },
    only: { type: "string" },
  },
});

const sources = [...filesUnder("src/core"), ...filesUnder("src/functions")].sort((a, b) =>
  a.path < b.path ? -1 : 1,
);
const textOf = new Map(sources.map(({ path, text }) => [path, text]));

function drawn(): Mutation[] {
  const chance = new Chance(Number(values.seed));
  const all = sources.flatMap(({ path, text }) => mutationsOf(path, text));
  return Array.from({ length: Math.min(Number(values.count), all.length) }, () => {
    const [one] = all.splice(chance.whole(0, all.length - 1), 1);
    return one as Mutation;
  });
}

/** Where it is, the line as it stood, and what one piece of it became. */
function described({ file, start, end, text }: Mutation): string {
  const source = textOf.get(file) ?? "";
  const before = source.slice(0, start).split("\n");
  const line = source.split("\n")[before.length - 1]?.trim() ?? "";
  return `${file}:${String(before.length)} \`${line}\`: \`${source.slice(start, end)}\` → \`${text}\``;
}

async function main(): Promise<void> {
  let suite = await MutatedSuite.open();
  const whole = (await suite.noticedBy("quick")) ?? (await suite.noticedBy("thorough"));
  if (whole !== undefined) throw new Error(`The suite fails without any mutation: ${whole}`);
  let survivors = 0;
  const all = drawn();
  const wanted = values.only === undefined ? all : values.only.split(",").map(Number);
  for (const [at, one] of wanted.entries()) {
    const number = typeof one === "number" ? one : at + 1;
    const mutation = all[number - 1];
    if (!mutation) continue;
    const by =
      (await suite.noticedBy("quick", mutation)) ??
      (isRefused(mutation) ? "the compiler" : undefined) ??
      (await suite.noticedBy("thorough", mutation));
    if (by === undefined) survivors += 1;
    // what runs without end is left to itself, until the command ends
    if (by === unending) suite = await MutatedSuite.open();
    console.log(`${String(number)} ${by ?? "SURVIVED"}\n    ${described(mutation)}`);
  }
  await suite.close();
  const count = String(wanted.length);
  console.log(
    `Seed ${values.seed}: of ${count} mutations ${String(survivors)} were noticed by no test.`,
  );
}

void main().then(() => process.exit());
