/**
 * What names a thing and not a figure, by its cells and its neighbours: where oil came from is a lot or a kind
 * of oil, "Charge" is a lot or a batch, a base is that of the burette or of the batch.
 */
import type { Candidate, Context } from "../context";
import type { RoleId } from "../roles";
import { isUnknown, says } from "../words/speaks-for";

const leastRows = 4;

const scoreOf = ({ scores }: Candidate, role: RoleId): number =>
  scores.find((each) => each.role === role)?.score ?? 0;

const hasDigit = /\p{L}.*\d|\d.*\p{L}/u;

/** A mark of its own in nearly each row: "NQ41", "drum 7". */
function isOfLots({ facts: { texts, numbers, filled, different } }: Candidate): boolean {
  const coded = texts.filter((text) => hasDigit.test(text)).length;
  if (texts.length > 1 && coded > texts.length / 2) return true;
  return filled >= leastRows && texts.length + numbers.length > 0 && different > 0.8 * filled;
}

/** What oil is pressed from. Common practice, no source. */
const plants =
  /rape|canola|colza|raps|koolzaad|sunfl|girass?ol|girasole|tournesol|sonnenbl|zonnebl|palm|soy|soj[aj]|soia|cotton|corn oil|tallow|lard/i;

export const isOfOils = ({ facts: { texts, filled, different } }: Candidate): boolean =>
  (different <= filled / 2 || !texts.some((text) => /\d/.test(text))) &&
  texts.some((text) => says(text, "oil") || says(text, "feedstock") || plants.test(text));

/** "KOH": a base, and no lot of it. */
export const isBaseWord = (text: string): boolean => says(text, "lye") && !/\d/.test(text);

/** A word for both: "Charge" is of oil or of fuel, "Lading" came in or went in. */
const isEither = ({ parts }: Candidate): boolean =>
  (says(parts.text, "lot") && says(parts.text, "batch")) ||
  (says(parts.text, "delivery") && says(parts.text, "batch"));

/** Where oil came from: nearly each row its own, or a few kinds again and again. */
const bySource: Context = (candidate, all) => {
  const { parts, facts } = candidate;
  if (!says(parts.text, "source") || says(parts.text, "kind")) return [];
  if (isOfOils(candidate)) return [["lot", -0.2, ""]];
  if (isOfLots(candidate))
    return [
      ["lot", 0.2, "a mark of its own in nearly each row"],
      ["oil", -0.6, ""],
    ];
  const isBesideLots = all.some((each) => each !== candidate && scoreOf(each, "lot") > 0.6);
  if (isBesideLots && says(parts.text, "oil")) return [["lot", -0.2, ""]];
  // the same few kitchens: no word of them is an oil
  return facts.filled >= leastRows ? [["oil", -0.2, ""]] : [];
};

/** Where oil came from, with a mark of its own in each row, is the lot. */
const isSourceOfLots = (each: Candidate): boolean =>
  says(each.parts.text, "source") &&
  !says(each.parts.text, "kind") &&
  isOfLots(each) &&
  !isOfOils(each);

const isSurely =
  (role: RoleId, than: RoleId) =>
  (each: Candidate): boolean =>
    scoreOf(each, role) >= 0.6 && scoreOf(each, role) > scoreOf(each, than);

const isSome =
  (roles: readonly RoleId[]) =>
  (each: Candidate): boolean =>
    roles.some((role) => scoreOf(each, role) > 0.75);

/** A mark in each row under a heading that nobody knows: as good a lot as a batch. */
const isByMarks = (each: Candidate): boolean =>
  isUnknown(each.parts.text) && scoreOf(each, "lot") > 0.4 && scoreOf(each, "batch") > 0.4;

/** "B101", "B102": one more in each row, as those who make batches number them. */
function isCountedOn({ facts: { texts, filled } }: Candidate): boolean {
  const marks = texts.map((text) => /^(\D{1,4})(\d{1,6})$/.exec(text));
  return (
    texts.length === filled &&
    marks.every(
      (mark, at) => mark?.[1] === marks[0]?.[1] && Number(mark?.[2]) === Number(marks[0]?.[2]) + at,
    )
  );
}

const isDosed = isSome(["oilAmount", "catalyst", "methanol"]);

/** One word for both: beside a column that is surely the one, it is the other. */
const byOther: Context = (candidate, all) => {
  if (!isEither(candidate) && !isByMarks(candidate)) return [];
  const others = all.filter((each) => each !== candidate && !isEither(each));
  const hasLot = others.some((each) => isSurely("lot", "batch")(each) || isSourceOfLots(each));
  const hasBatch = others.some(isSurely("batch", "lot"));
  if (hasLot && !hasBatch)
    return [
      ["lot", -0.3, ""],
      ["batch", 0.15, "another column is the lot"],
    ];
  if (hasBatch && !hasLot)
    return [
      ["batch", -0.3, ""],
      ["lot", 0.1, "another column is the batch"],
    ];
  if (isEither(candidate) && isCountedOn(candidate)) {
    const isSecond = all.some((each) => each !== candidate && isEither(each) && !isCountedOn(each));
    const isOfBatches = all.some(isDosed) && !all.some(isSome(["titre", "blank"]));
    if (isSecond || isOfBatches)
      return [
        ["lot", -0.15, ""],
        ["batch", 0.15, "numbered on in each row"],
      ];
  }
  if (isEither(candidate) && isOfLots(candidate) && !isCountedOn(candidate))
    return [["lot", 0.1, "a mark of its own in each row"]];
  if (!isByMarks(candidate)) return [];
  const doses = all.some(isDosed);
  const titrates = all.some(isSome(["titre", "blank"]));
  if (isCountedOn(candidate)) return [["lot", -0.1, ""]];
  if (titrates && !doses) return [["batch", -0.1, ""]];
  // nothing tells: a person is asked, with both offered
  return [
    ["lot", -0.1, ""],
    ["batch", -0.1, ""],
  ];
};

export const namedThings: readonly Context[] = [bySource, byOther];
