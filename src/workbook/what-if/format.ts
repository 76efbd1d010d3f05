/** How many decimals a table of figures is shown with. */
import { type Exact, exact } from "../../core/exact/exact";

const edges = ["100", "10", "1", "0.1", "0.01"].map((edge) => exact(edge));

/** Three digits at least of the smallest figure: 1286, 12.9, 1.29. */
export function placesFor(figures: readonly Exact[]): number {
  const [first, ...others] = figures;
  if (!first) return 0;
  const smallest = others.reduce((least, each) => (each.lt(least) ? each : least), first);
  const places = edges.findIndex((edge) => smallest.gte(edge));
  return places < 0 ? edges.length : places;
}

/** The number format of so many decimals, as a spreadsheet writes it. */
export const formatOf = (places: number): string =>
  places === 0 ? "0" : `0.${"0".repeat(places)}`;
