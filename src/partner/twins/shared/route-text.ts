/** The sentence of ROUTE, built from the core's own bands and words. */
import { bands, mostWater, routeWords } from "../../../core/batch/route";
import { ffaAsOleic } from "./doses";
import type { Reading } from "./reading";
import { exactly, shown } from "./shown-text";
import { atLeast, atMost, figure, significant, spoken, text, when } from "./text";

/** No edge lies above. */
const none = "1E9";

/** Digits of a figure in a sentence, and of the % FFA. */
const digits = 10;
const fewest = 3;

/** As few digits as still show that the figure is below the edge. */
function roundedBelow(value: string, edge: string): string {
  const tried = Array.from({ length: digits - fewest }, (_, place) => place + fewest);
  return tried.reduceRight(
    (otherwise, each) => {
      const rounded = significant(value, each);
      return when(`${rounded}<${edge}`, rounded, otherwise);
    },
    significant(value, digits),
  );
}

/**
 * @param water text of the water, % m/m, or of "" where it was not measured
 */
export function routeText(
  reading: Reading,
  acidValue: string,
  water: string,
  limit: string,
): string {
  const { helper } = reading.call;
  const ffa = helper("FFA as oleic, %", reading.guarded(ffaAsOleic(acidValue)));
  const edges = bands.map(({ from }) => (from ? figure(from) : limit));
  const reached = edges
    .slice(1)
    .map((edge, place) => when(atLeast(ffa, edge), String(place + 2), "1"));
  const band = helper("band, counted from the least acid", `MAX(${reached.join(",")})`);
  const above = edges.slice(1).map((edge) => when(atLeast(ffa, edge), none, edge));
  const to = helper("upper edge of the band, % FFA", `MIN(${above.join(",")})`);
  const from = `CHOOSE(${band},${edges.join(",")})`;
  const shownFrom = exactly(reading, helper("lower edge of the band, % FFA", from));
  const shownTo = exactly(reading, to);
  const words = when(
    `${to}=${none}`,
    spoken(routeWords.orMore, shownFrom),
    when(
      `${band}=1`,
      spoken(routeWords.under, shownTo),
      spoken(routeWords.between, shownFrom, shownTo),
    ),
  );
  const shownFfa = when(`${to}=${none}`, significant(ffa, fewest), roundedBelow(ffa, to));
  const shownWater = water === '""' ? water : shown(reading, water, digits);
  const measured = when(
    atMost(water, figure(mostWater)),
    spoken(routeWords.dry, shownWater),
    spoken(routeWords.wet, shownWater),
  );
  return spoken(
    routeWords.sentence,
    exactly(reading, helper("FFA as shown, %", shownFfa)),
    words,
    `CHOOSE(${band},${bands.map(({ advice }) => text(advice)).join(",")})`,
    water === '""'
      ? text(routeWords.notMeasured)
      : when(`${water}=""`, text(routeWords.notMeasured), measured),
  );
}
