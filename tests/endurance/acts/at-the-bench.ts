/** Acts on the titration under way: typed, added, changed, omitted, put back, undone. */
import assert from "node:assert/strict";
import { isProblem } from "../../../src/core/problem/problem";
import type { Reading, ReadingList } from "../../../src/taskpane/titrate/draft";
import type { NumberFieldId } from "../../../src/taskpane/titrate/fields";
import { figuresOf } from "../../../src/taskpane/titrate/figures";
import { entryOf } from "../../../src/taskpane/titrate/readings";
import { type View, viewOf } from "../../../src/taskpane/titrate/view-of";
import { today } from "../bench-world";
import { isNear } from "../by-hand";
import { acidOf, type Slip } from "../slip-model";
import type { World } from "../world";

/** A blank and a titre are typed each in fields of its own. */
const entry: Record<ReadingList, readonly [used: string, start: string, end: string]> = {
  titres: ["used", "start", "end"],
  blanks: ["blankUsed", "blankStart", "blankEnd"],
};

/** What no reading is made of. */
const wrong = ["", "abc", "0", "-1", "2.4.5", "1,234", "=2", "1e3", "12 500"];

const figures: Record<string, (world: World) => string> = {
  molarity: ({ chance }) => chance.of(["0.0998", "0.1021", "0,25", "0.05"]),
  certified: ({ chance }) => chance.of(["0.0998", "0.1003", "0.2"]),
  gramsPerLitre: ({ chance }) => chance.of(["1", "5.61", "4,2"]),
  assay: ({ chance }) => chance.of(["90", "98.5", "85"]),
  mass: ({ chance }) => (chance.is(0.05) ? "0.05" : chance.figure(4, 12)),
  massStep: ({ chance }) => chance.of(["0.01", "0.1"]),
  titreStep: ({ chance }) => chance.of(["0.05", "0.02", "0.1"]),
  strengthPercent: ({ chance }) => chance.of(["0.5", "1"]),
  volume: ({ chance }) => chance.figure(1, 10),
};

const typeInto = (world: World, field: string, text: string): Promise<void> =>
  world.bench.act({ do: "type", field: field as NumberFieldId, text }, ({ typed }) => {
    typed[field] = text;
  });

/** Letter by letter, as far as it goes: somebody may stop in the middle. */
export async function typeFigure(world: World): Promise<void> {
  const field = world.chance.of(Object.keys(figures));
  const text = figures[field]?.(world) ?? "";
  const from = world.chance.is(0.1) ? 1 : text.length;
  for (let length = from; length <= text.length; length += 1) {
    await typeInto(world, field, text.slice(0, length));
  }
}

const pick = (world: World, name: string, word: string): Promise<void> =>
  world.bench.act({ do: "pick", picked: { [name]: word } }, ({ picked }) => {
    picked[name] = word;
  });

export const pickSomething = (world: World): Promise<void> => {
  const { chance } = world;
  const [name, words] = chance.of<readonly [string, readonly string[]]>([
    ["way", ["molarity", "certified", "gramsPerLitre"]],
    ["base", ["KOH", "NaOH"]],
    ["blank", ["titrated", "titrated", "neutralised", ""]],
    ["masses", ["one", "one", "own"]],
    ["reading", ["used", "used", "start and end"]],
  ]);
  return pick(world, name, chance.of(words));
};

export const writeWords = ({ bench, chance }: World): Promise<void> => {
  const isLot = chance.is(0.7);
  const text = isLot
    ? chance.of(["F-207", "NQ-41", "=1+1", "007", "<b>", `L-${String(chance.whole(1, 9))}`])
    : chance.of(["", "from the jetty", "+1", "'quoted"]);
  return bench.act({ do: "write", words: isLot ? { lot: text } : { note: text } }, (slip) => {
    if (isLot) slip.lot = text;
    else slip.note = text;
  });
};

function withoutEntry(slip: Slip, list: ReadingList, latest: Reading | undefined): void {
  for (const field of entry[list]) Reflect.deleteProperty(slip.typed, field);
  if (list === "titres") Reflect.deleteProperty(slip.typed, "ownMass");
  if (latest?.end !== undefined) slip.typed[entry[list][1]] = latest.end;
}

const point = (text: string): string => text.replace(",", ".");

/** The reading that the model sees in what was just typed. */
function expected(typed: Record<string, string>, hasMass: boolean): Reading {
  const { used = "", start = "", end = "", ownMass = "" } = typed;
  const mass = hasMass ? { mass: point(ownMass) } : {};
  if (start === "" && end === "") return { used: point(used), ...mass };
  const hundredths = Math.round(Number(point(end)) * 100) - Math.round(Number(point(start)) * 100);
  return {
    used: (hundredths / 100).toFixed(2),
    start: point(start),
    end: point(end),
    ...mass,
  };
}

/** Types one reading, wrong first now and then, and takes it with Enter. */
export async function takeReading(world: World, changed?: number): Promise<void> {
  const { bench, chance } = world;
  const { slip } = bench;
  const list: ReadingList =
    slip.picked.blank === "titrated" && chance.is(0.3) ? "blanks" : "titres";
  const hasMass = list === "titres" && slip.picked.masses === "own";
  const hasScale = slip.picked.reading === "start and end";
  const [used, start, end] = entry[list];
  const first = hasScale ? end : used;
  const entryNow = () => entryOf(bench.bench.draft, figuresOf(bench.bench.draft, "."), list);
  if (hasScale) await typeInto(world, start, chance.figure(0, 3));
  if (hasMass) await typeInto(world, "ownMass", chance.figure(4, 12));
  if (chance.is(0.1)) {
    await typeInto(world, first, chance.of(wrong));
    assert.notEqual(entryNow().kind, "reading");
    return;
  }
  const text = list === "blanks" ? chance.of(["0.10", "0.15", "0,2"]) : chance.figure(1, 8);
  const ends = list === "blanks" ? chance.of(["3.10", "3.25"]) : chance.figure(4, 12);
  await typeInto(world, first, hasScale ? ends : text);
  const now = slip.typed;
  const scale = hasScale ? { start: now[start] ?? "", end: now[end] ?? "" } : { used: text };
  const reading = expected({ ...scale, ownMass: now.ownMass ?? "" }, hasMass);
  const found = entryNow();
  assert.deepEqual(found, { kind: "reading", reading });
  const most = list === "titres" ? 6 : 3;
  const before = { titres: [...slip.titres], blanks: [...slip.blanks] };
  if (changed !== undefined && changed < slip[list].length) {
    await bench.act({ do: "change", list, index: changed, reading }, (after) => {
      const { omitted } = after[list][changed] ?? {};
      bench.past = [...bench.past, before].slice(-20);
      after[list] = after[list].map((each, at) =>
        at === changed ? { ...reading, ...(omitted === undefined ? {} : { omitted }) } : each,
      );
      withoutEntry(after, list, changed === after[list].length - 1 ? reading : after[list].at(-1));
      after.isRecorded = false;
    });
    return;
  }
  await bench.act({ do: "add", list, reading }, (after) => {
    if (after[list].length >= most) return;
    bench.past = [...bench.past, before].slice(-20);
    after[list] = [...after[list], reading];
    withoutEntry(after, list, reading);
    after.isRecorded = false;
  });
}

export const changeReading = (world: World): Promise<void> =>
  takeReading(world, world.chance.whole(0, 5));

/** Omit or put back; a blank is taken away instead. */
export async function omitOrPutBack({ bench, chance }: World): Promise<void> {
  const { titres, blanks } = bench.slip;
  const before = { titres: [...titres], blanks: [...blanks] };
  const remember = (): void => {
    bench.past = [...bench.past, before].slice(-20);
  };
  if (blanks.length > 1 && chance.is(0.15)) {
    const index = chance.whole(0, blanks.length - 1);
    await bench.act({ do: "remove-blank", index }, (slip) => {
      remember();
      slip.blanks = blanks.filter((_, at) => at !== index);
      slip.isRecorded = false;
    });
    return;
  }
  if (titres.length === 0) return;
  const index = chance.whole(0, titres.length - 1);
  const reason = chance.of(["bubble", "overshot", "=spilt"]);
  const isOut = titres[index]?.omitted !== undefined;
  await bench.act(isOut ? { do: "put-back", index } : { do: "omit", index, reason }, (slip) => {
    remember();
    slip.titres = titres.map((each, at) => {
      if (at !== index) return each;
      if (!isOut) return { ...each, omitted: reason };
      const rest = { ...each };
      Reflect.deleteProperty(rest, "omitted");
      return rest;
    });
    slip.isRecorded = false;
  });
}

export const undoOnTheSlip = ({ bench }: World): Promise<void> =>
  bench.act({ do: "undo" }, (slip) => {
    const last = bench.past.at(-1);
    if (!last) return;
    bench.past = bench.past.slice(0, -1);
    Object.assign(slip, last, { isRecorded: false });
  });

const viewNow = ({ bench }: World): View => viewOf(bench.bench.draft, ".", today);

/** What the pane shows is what the arithmetic by hand gives. */
export function lookAtResult(world: World): View {
  const view = viewNow(world);
  const { acid } = view.working;
  const wanted = acidOf(world.bench.slip);
  if (wanted === "missing") assert.equal(acid, undefined);
  else if (wanted === undefined) assert.equal(isProblem(acid), true);
  else if (wanted.isPlausible) {
    if (acid === undefined || isProblem(acid)) throw new Error("no acid value is shown");
    const { correctedTitre, acidValue, ffa } = acid;
    const shown = [correctedTitre, acidValue, ffa].map((each) => each.toNumber());
    const byHand = [wanted.corrected, wanted.acidValue, wanted.ffa];
    if (!shown.every((each, at) => isNear(each, byHand[at] ?? 0))) {
      throw new Error(`shown ${shown.join(" ")}, by hand ${byHand.join(" ")}`);
    }
  }
  const { doubt } = view.working;
  if (doubt) assert.equal(Number.isFinite(doubt.halfWidth), true);
  return view;
}
