/**
 * An end point that a probe sees, for oil too dark for a colour: readings pasted, typed or out of a file,
 * the curve as they come, the end point with how sure it is, and the readings on a sheet of their own.
 */
import { Button, Field, Textarea } from "@fluentui/react-components";
import { type ChangeEvent, useRef } from "react";
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { Host } from "../../sheet/port";
import { planProbe, type ProbeAsked, writeProbe } from "../../workbook/planning/plan-probe";
import { PlannedSheet } from "../planned/planned-sheet";
import { Say } from "../widgets/say";
import { digits, fixed } from "../widgets/shown-number";
import { Spoken } from "../widgets/spoken";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { CurvePlot } from "./curve-plot";
import { isCoarse, notRising, probeFound, type Sure } from "./found";
import { oddReadings } from "./odd-readings";
import { Questions } from "./questions";
import { type PairsRead, readPairs } from "./read-pairs";
import { Taken } from "./taken";

export interface ProbeProps {
  readonly host: Host;
  readonly lot: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly mark: DecimalMark;
  /** The number of the titre that this curve was put in as; undefined while it is none. */
  readonly titre: number | undefined;
  /** The curve that was put in last. */
  readonly last: string;
  /** There are blanks, and they were titrated to a colour. */
  readonly isBlankByColour: boolean;
  /** The end point as a titre, in plain digits. */
  readonly onTitre: (millilitres: string) => void;
}

const places = 2;

const askedOf = (lot: string, { points }: PairsRead): ProbeAsked => ({
  lot,
  points: points.map(([volume, reading]) => [volume.toNumber(), reading.toNumber()] as const),
});

function Sureness({ sure, inMark }: { sure: Sure; inMark: (text: string) => string }) {
  const { from, to } = sure.found.steepest;
  const words = `End point ${fixed(sure.found.volume, places)} mL. It lies on the step from ${digits(from, 6)} to ${digits(to, 6)} mL, and is known no better than ± ${digits(sure.halfStep, 2)} mL.`;
  return (
    <>
      <Say tone="know">{inMark(words)}</Say>
      {isCoarse(sure) ? (
        <Say tone="check">{inMark("Go in steps of 0.05 to 0.1 mL where it moves most.")}</Say>
      ) : null}
    </>
  );
}

export function Probe({
  host,
  lot,
  text,
  titre,
  last,
  isBlankByColour,
  onText,
  mark,
  onTitre,
}: ProbeProps) {
  const file = useRef<HTMLInputElement>(null);
  const inMark = (words: string): string => withMark(words, mark);
  const read = readPairs(text, mark);
  const asked = oddReadings(read);
  // one misread figure would draw the end point to itself
  const found = asked.odd.length > 0 ? undefined : probeFound(read.points);
  const sure = found === undefined || isProblem(found) ? undefined : found;
  const taken = (event: ChangeEvent<HTMLInputElement>): void => {
    const [chosen] = event.target.files ?? [];
    if (chosen) void chosen.text().then(onText, () => undefined);
  };
  return (
    <>
      <p>
        For oil too dark for a colour (ISO 660). A reading a line: mL given so far, then pH or mV.
      </p>
      <Field label="Readings of the probe">
        <Textarea
          className="probe-text"
          size="large"
          rows={8}
          resize="vertical"
          value={text}
          onChange={(_, typed) => {
            onText(typed.value);
          }}
        />
      </Field>
      <input
        ref={file}
        type="file"
        hidden
        accept=".csv,.txt,text/csv,text/plain"
        onChange={taken}
      />
      <Button size="large" className="wide" onClick={() => file.current?.click()}>
        From a CSV file
      </Button>
      {text.trim() === "" && last !== "" ? (
        <Button
          size="large"
          className="wide"
          onClick={() => {
            onText(last);
          }}
        >
          Bring back the last curve
        </Button>
      ) : null}
      <CurvePlot points={read.points} end={sure?.found.volume.toNumber()} inMark={inMark} />
      <Spoken>
        {read.faults.slice(0, 3).map((fault) => (
          <Say key={fault} tone="check">
            {inMark(fault)}
          </Say>
        ))}
        {read.zeros === 0 ? null : (
          <Say tone="know">
            {read.zeros === 1
              ? "The line with 0 is left out: 0 counts as empty."
              : "Lines with 0 are left out: 0 counts as empty."}
          </Say>
        )}
        {isProblem(found) ? <Say tone="check">{inMark(notRising(read) ?? say(found))}</Say> : null}
        {sure ? <Sureness sure={sure} inMark={inMark} /> : null}
        {sure && isBlankByColour ? (
          <Say tone="check">
            The blank was titrated to a colour. Titrate it by the probe too: both to the same end
            point.
          </Say>
        ) : null}
      </Spoken>
      <Questions read={read} found={asked} text={text} onText={onText} />
      {sure ? (
        <>
          {titre === undefined ? (
            <Button
              size="large"
              className="wide"
              onClick={() => {
                onTitre(fixed(sure.found.volume, places));
              }}
            >
              {inMark(`Put ${fixed(sure.found.volume, places)} mL into Volume used`)}
            </Button>
          ) : (
            <Taken
              titre={titre}
              onFresh={() => {
                onText("");
              }}
            />
          )}
          <PlannedSheet
            words="Put these readings on a sheet"
            closeWords="Close the sheet"
            host={host}
            asked={askedOf(lot, read)}
            plan={planProbe}
            write={writeProbe}
            inMark={inMark}
            undoTakes="takes the sheet back"
          />
        </>
      ) : null}
    </>
  );
}
