/** One thing that was looked at. */
export interface Finding {
  /** What it is about: "Node", "port 3001". */
  readonly about: string;
  /** "mind" is worth knowing; "mend" keeps something from working. */
  readonly state: "well" | "mind" | "mend";
  /** What was found; where it must be mended, with what mends it. */
  readonly says: string;
}

export const well = (about: string, says: string): Finding => ({ about, state: "well", says });
export const mind = (about: string, says: string): Finding => ({ about, state: "mind", says });
export const mend = (about: string, says: string): Finding => ({ about, state: "mend", says });

const marks = { well: "well", mind: "mind", mend: "MEND" } as const;

export const report = (findings: readonly Finding[]): string => {
  const width = Math.max(...findings.map(({ about }) => about.length));
  const lines = findings.map(
    ({ about, state, says }) => `${marks[state]}  ${about.padEnd(width)}  ${says}`,
  );
  const faults = findings.filter(({ state }) => state === "mend").length;
  const last =
    faults === 0
      ? "Nothing to mend."
      : `${faults === 1 ? "One thing" : `${faults} things`} to mend, marked MEND.`;
  return [...lines, last].join("\n");
};
