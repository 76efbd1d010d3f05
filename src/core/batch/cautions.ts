/**
 * The cautions, each said once: README, help, the pane, the functions' rows, printed sheets and samples
 * all draw from this list (tests/rules/cautions.test.ts). Common practice, no source, unless one is
 * named. They defer: to the safety data sheet, to local rules, to qualified advice.
 */
import { type SourceId, sources } from "../reference/sources";

/** What is being done when a caution matters. */
export const works = [
  "titrating",
  "making titrant",
  "heating",
  "mixing",
  "dosing",
  "acid step",
  "draining",
  "planning",
] as const;
export type Work = (typeof works)[number];

interface Fact {
  readonly words: string;
  readonly fits: readonly Work[];
  /** Of what is no common practice. */
  readonly source?: SourceId;
}

/** What matters most stands first: where three are shown, they are the first three that fit. */
const facts = {
  sulfuricAcid: {
    words:
      "Sulfuric acid goes in small portions into cold methanol, stirred and kept below about 40 °C; then that mixture goes into oil below about 55 °C. Concentrated acid chars warm oil, and spits. Never water into acid, never acid onto lye.",
    fits: ["acid step"],
  },
  permission: {
    words:
      "A result is not a permission. Follow the safety data sheet of the lot in hand, local fire, environmental and fuel-excise rules, and a qualified person's advice.",
    fits: ["titrating", "dosing", "acid step", "planning"],
  },
  acidProof: {
    words:
      "An acid step needs a vessel that acid does not attack: no mild steel, zinc or aluminium. The layer that is drained off is corrosive, poisonous and flammable at once.",
    fits: ["acid step"],
  },
  drying: {
    words:
      "Drain settled water and dry the oil by heating it slowly: water under hot oil erupts. Let it cool to about 55 °C, below methanol's boiling point, before methoxide goes in.",
    fits: ["heating"],
  },
  heaters: {
    words:
      "Never leave oil heating alone: a heater left on burned a shed down, and an element bared by a falling level sets oil alight. Fit a thermostat and a cut-out as well. No heater in a vessel that ever holds methanol.",
    fits: ["heating"],
    source: "mmwr",
  },
  intoMethanol: {
    words:
      "Add base to methanol, or to a titrant's solvent, in small portions, never the other way round, in a vented vessel with its lid on. Never in aluminium, zinc or tin, where it makes hydrogen. Solid methoxide heats itself in air. Methoxide burns, poisons and eats skin at once, and numbs what it hurts.",
    fits: ["mixing", "dosing", "making titrant"],
  },
  warming: {
    words:
      "Base warms methanol. Keep it below 45 °C: stop, wait until it has cooled, go on. A vessel gets warmer than a small trial.",
    fits: ["mixing"],
  },
  vapour: {
    words:
      "Methanol lights at about 11 °C, its vapour burns from 6 to 36 % in air, and its flame is hard to see. Where it is open: no flame, spark or hot surface, no drill, brushed motor, plug or switch. Outdoors, or with air forced along the floor; smell is no warning.",
    fits: ["mixing", "dosing"],
    source: "methanolVapour",
  },
  methanol: {
    words:
      "Methanol is poisonous by mouth, breath and skin, and its harm shows hours later. Swallowed or breathed in: medical help at once, even when feeling well.",
    fits: ["mixing"],
  },
  plastic: {
    words:
      "Plastic cannot be earthed, softens with heat, and feeds a fire. Use stainless steel vessels, and earth them before pouring.",
    fits: ["heating", "mixing"],
  },
  crudeFuel: {
    words:
      "Until their methanol is washed out or drawn off, crude fuel and glycerol catch fire as methanol does. Drawing it off by heat or vacuum takes a condenser, a vent led away and no flame; a drum under vacuum collapses.",
    fits: ["draining"],
  },
  waste: {
    words:
      "Glycerol and wash water hold methanol, base and soap: none of it down a drain without permission. Oily rags heat themselves and catch fire: keep them wet, in a metal bin with a lid.",
    fits: ["draining"],
  },
  welding: {
    words: "Never weld, cut or grind a vessel that has held fuel or methanol.",
    fits: ["draining"],
  },
  bench: {
    words:
      "At the bench: titrant burns skin and eyes, and its solvent catches fire. Goggles and gloves on, no flame near. Phenolphthalein is classed as a carcinogen (commonly cited): drops only, no bare skin.",
    fits: ["titrating", "making titrant"],
  },
  eyes: {
    words:
      "Wear goggles and the gloves that the safety data sheets name: thin ones let methanol through. Eyes and skin: rinse with water for 15 minutes or longer, never with vinegar, and get medical help.",
    fits: ["titrating", "making titrant", "mixing", "acid step"],
  },
  law: {
    words:
      "Used oil is waste in many places: its carriers may need a licence, rules for animal by-products may apply, and fuel made of it may owe duty. Tell insurer and landlord.",
    fits: ["planning"],
  },
  atHome: {
    words:
      "Some regulators advise against making biodiesel at home at all. If it is at home, hear yours before you begin.",
    fits: ["planning"],
    source: "mmwr",
  },
  company: {
    words:
      "Never work alone; children stay out. An alcohol-resistant extinguisher and an eyewash stand at the door. Nothing goes into food bottles.",
    fits: ["planning"],
  },
  trial: {
    words: "For a new lot, run a one-litre trial before the vessel.",
    fits: ["dosing", "planning"],
  },
} as const satisfies Record<string, Fact>;

export type CautionId = keyof typeof facts;

const said = ({ words, source }: Fact): string =>
  source === undefined ? words : `${words} (${sources[source]})`;

/** One caution, where its subject is spoken of. */
export const caution = (id: CautionId): string => said(facts[id]);

const all: readonly Fact[] = Object.values(facts);

/** All of them, each with its source where it has one: for paper, and one press away elsewhere. */
export const cautions: readonly string[] = all.map(said);

/** A longer list is not read. */
const shownAtOnce = 3;

/** The three that matter most for the work in hand. */
export const cautionsFor = (work: Work): readonly string[] =>
  all
    .filter(({ fits }) => fits.includes(work))
    .slice(0, shownAtOnce)
    .map(said);

/** Said beside the list. */
export const aboutCautions = "Common practice, no source, unless one is named.";
