/** An omitted reading in words, as the row keeps it: "Titre 2 = 2.90 mL: bubble". */
import type { Exact } from "../../core/exact/exact";
import type { OmittedReading } from "./titration-record";

/** Readings are written to the hundredth, or as finely as they were read. */
const leastPlaces = 2;

/** A reading with the places its step has: 2.9 read to 0.05 mL is "2.90". */
const readingText = (reading: Exact, step: Exact | undefined): string =>
  reading.toFixed(
    Math.max(leastPlaces, reading.decimalPlaces(), step === undefined ? 0 : step.decimalPlaces()),
  );

export const omittedWords = (omitted: readonly OmittedReading[], step: Exact | undefined): string =>
  omitted
    .map(
      ({ number, titre, reason }) =>
        `Titre ${number} = ${readingText(titre, step)} mL: ${reason.trim()}`,
    )
    .join("; ");
