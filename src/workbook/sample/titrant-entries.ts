/** The titrants of the demo co-operative: one bottle checked all summer, slowly weaker, and a fresh one. */
import { serialDay } from "../../sheet/serial-days";
import type { Entry } from "../tables/sheet";

const bottle = {
  Titrant: "K-5",
  Base: "KOH",
  "How known": "KHP",
  "Blank mL": 0.05,
  "Weighed to g": 0.001,
  "Read to mL": 0.05,
} as const;

/** Three titrations against KHP on one day: g and mL of each. */
const checked = (
  [month, day]: readonly [number, number],
  masses: readonly [number, number, number],
  titres: readonly [number, number, number],
): Entry => ({
  Date: serialDay(2026, month, day),
  ...bottle,
  "KHP 1 g": masses[0],
  "KHP 2 g": masses[1],
  "KHP 3 g": masses[2],
  "Titre 1 mL": titres[0],
  "Titre 2 mL": titres[1],
  "Titre 3 mL": titres[2],
});

export const titrantEntries: readonly Entry[] = [
  checked([6, 9], [0.512, 0.51, 0.513], [25, 24.9, 25.05]),
  checked([6, 23], [0.512, 0.508, 0.512], [25.05, 24.85, 25.05]),
  checked([7, 7], [0.511, 0.514, 0.51], [25.05, 25.15, 25]),
  checked([7, 21], [0.51, 0.513, 0.515], [25, 25.15, 25.2]),
  checked([8, 4], [0.512, 0.512, 0.508], [25.1, 25.1, 24.95]),
  checked([8, 18], [0.506, 0.506, 0.511], [24.85, 24.85, 25.1]),
  checked([9, 1], [0.513, 0.507, 0.51], [25.2, 24.95, 25.1]),
  checked([9, 15], [0.512, 0.507, 0.506], [25.2, 24.95, 24.9]),
  {
    Date: serialDay(2026, 9, 28),
    Titrant: "K-6",
    Base: "KOH",
    "How known": "weighing",
    "Stated mol/L": 0.1003,
    "Stated ± %": 1,
    Note: "Fresh bottle, not yet checked against KHP.",
  },
];
