/**
 * The bench card's order of addition: what is done, how warm, how long, and the caution of each step.
 * Common practice, no source, unless one is named; the cautions are the catalogue's own.
 */
import { type BriefId, brief } from "../batch/cautions";

/** An amount that is weighed or measured in a step. */
export type Weighed = "oil" | "methanol" | "lye";

export interface CardStep {
  readonly id: string;
  /** What to do. */
  readonly words: string;
  /** How warm, how long; "" where neither matters. */
  readonly when: string;
  readonly caution: string;
  /** What is put on the scale or into the measure here. */
  readonly weighs?: Weighed;
}

const step = (
  id: string,
  words: string,
  when: string,
  of: BriefId,
  weighs?: Weighed,
): CardStep => ({
  id,
  words,
  when,
  caution: brief(of),
  ...(weighs ? { weighs } : {}),
});

export const cardSteps: readonly CardStep[] = [
  step("oil", "Drain off water. Put in the oil.", "", "company", "oil"),
  step("dry", "Heat slowly until no more steam comes. Let it cool.", "to 55 °C", "drying"),
  step("trial", "New lot? Make one litre first. Go on only if that came out right.", "", "trial"),
  step("methanol", "Put methanol into the mixing vessel.", "cold", "methanol", "methanol"),
  step("lye", "Weigh the lye. Close its tub.", "", "lye", "lye"),
  step(
    "dissolve",
    "Lye into the methanol, a little at a time. Stir until all the lye is dissolved. From now on this is methoxide.",
    "below 45 °C: stop, wait, go on",
    "intoMethanol",
  ),
  step(
    "mix",
    "Heater off. Methoxide into the oil, little by little, stirring, lid on.",
    "oil at 50 to 55 °C",
    "vapour",
  ),
  step(
    "stir",
    "Keep stirring, lid on. Heater stays off: lag the vessel, or hot water around it.",
    "1 hour at 50 to 55 °C",
    "heaters",
  ),
  step(
    "settle",
    "Stop. Let it stand. Note when the dark layer shows.",
    "8 hours or longer",
    "plastic",
  ),
  step("drain", "Drain the dark layer, glycerol, into a closed can.", "", "crudeFuel"),
  step(
    "tried",
    "Methanol trial: shake 3 mL of fuel with 27 mL of methanol. Clear: go on. Oil at the bottom: not done yet.",
    "at 20 °C, look after 10 minutes",
    "methanol",
  ),
  step("wash", "Wash with warm water until it comes off clear. Count the washes.", "", "waste"),
  step("fuel", "Dry the fuel until it is clear. Measure it.", "", "welding"),
];

export interface CardTrouble {
  readonly seen: string;
  readonly act: string;
}

const trouble = (seen: string, act: string): CardTrouble => ({ seen, act });

/** What to do when it goes wrong: people first, then the vessel. */
export const cardTroubles: readonly CardTrouble[] = [
  trouble("On skin, in eyes", brief("eyes")),
  trouble("Swallowed, breathed in", "Medical help at once, even when feeling well."),
  trouble(
    "Fire",
    "Everybody out. Call the fire service. Fight only what is small and in the open.",
  ),
  trouble("Methanol above 45 °C", "No more lye. Lid on, wait until it is cool."),
  trouble("Oil above 55 °C", "Wait. Methanol boils at about 65 °C."),
  trouble("No layer after 8 hours, or jelly", "Keep it warm for a day. Titrate this oil again."),
  trouble(
    "Oil in the methanol trial",
    "Drain the glycerol. Treat one litre again first, then the rest.",
  ),
  trouble("Wash turns to cream", "Stop stirring. Let it stand warm. Wash more gently."),
];
