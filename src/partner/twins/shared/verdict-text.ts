/** The sentence of VERDICT, built from the core's own words. */
import { mostPlaces, placesOfG, verdictWords as words } from "../../../core/replicates/verdict";
import { cellsOf } from "./list";
import type { TestText } from "./outlier-text";
import type { Reading } from "./reading";
import type { ReplicateColumns } from "./replicate-columns";
import { decimalsOf, exactly, fixed } from "./shown-text";
import { significant, spoken, text, when } from "./text";

/** Digits of a figure that was worked out in the sheet. */
const digits = 10;

export function verdictText(reading: Reading, columns: ReplicateColumns, test: TestText): string {
  const { helper, helperColumn } = reading.call;
  const { read, judged, count, mean, masses, confidence } = columns;
  const cells = cellsOf(read);
  const decimals = helperColumn(
    "decimals of the reading",
    cells.map((cell) => when(`${cell}=""`, '""', decimalsOf(cell, mostPlaces))),
  );
  const places = helper(
    "decimals shown",
    `MIN(${mostPlaces},MAX(${decimals.text},${decimalsOf(test.step, mostPlaces)}))`,
  );
  const finer = helper("decimals of a mean", `${places}+1`);
  const shown = helperColumn(
    "reading as shown",
    cells.map((cell, place) => {
      // A reading that was worked out in the sheet.
      const long = `${significant(cell, digits)}&""`;
      const short = fixed(cell, places);
      return when(
        `${cell}=""`,
        '""',
        when(`${decimals.cell(place, 0)}>${mostPlaces}`, long, short),
      );
    }),
  );
  const filled = helperColumn(
    "place of a reading",
    cells.map((cell, place) => when(`${cell}=""`, '""', String(place + 1))),
  );
  const nth = (n: number): string =>
    cells.length === 1 ? shown.cell(0, 0) : `INDEX(${shown.text},SMALL(${filled.text},${n}))`;
  const forMass = (said: string): string =>
    masses === "0" ? '""' : when(`${masses}=0`, '""', text(said));

  const apart = fixed(`MAX(${judged.text})-MIN(${judged.text})`, places);
  const two = spoken(words.two, nth(1), nth(2), apart, forMass(words.forMasses));
  const both = spoken(words.bothAre, nth(1));
  const ofTwo = when(`AND(${nth(1)}=${nth(2)},${masses}=0)`, both, two);
  const all = fixed(mean, places);
  const equal = when(
    `${count}=3`,
    spoken(words.allThree, all, forMass(words.forMasses)),
    spoken(words.all, count, all, forMass(words.forMasses)),
  );

  const figure = helper(
    "figures of the test, in words",
    spoken(
      words.figure,
      fixed(test.graduated, placesOfG),
      fixed(test.critical, placesOfG),
      exactly(reading, confidence),
    ),
  );
  const one = `INDEX(${shown.text},${test.place})`;
  const withIt = fixed(mean, finer);
  const others = `(SUM(${judged.text})-INDEX(${judged.text},${test.place}))/(${count}-1)`;
  const mass = forMass(words.forMass);
  const suspect = when(
    `${count}=3`,
    spoken(words.suspectOfThree, one, mass, figure),
    spoken(words.suspect, one, mass, figure, withIt, fixed(others, finer)),
  );
  const agrees = when(
    `${count}=3`,
    spoken(words.farthestOfThree, one, mass, figure),
    spoken(words.farthest, one, mass, figure, count, withIt),
  );
  const untested = when(`${count}=1`, spoken(words.one, nth(1)), when(`${count}=2`, ofTwo, equal));
  return when(test.isTested, when(`${test.graduated}>${test.critical}`, suspect, agrees), untested);
}
