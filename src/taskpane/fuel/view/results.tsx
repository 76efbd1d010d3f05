/** A figure of the fuel with its ± and its verdict; a problem in its place. */
import { isProblem } from "../../../core/problem/problem";
import { say } from "../../../core/problem/wording";
import { Say } from "../../widgets/say";
import { capital, digits, doubtText } from "../../widgets/shown-number";
import { computed } from "../../../core/exact/exact";
import type { Judged, Shown } from "../working";
import { useMark } from "./desk";

export interface ResultProps {
  readonly name: string;
  readonly unit: string;
  readonly found: Judged;
  /** What is missing where there is no ±. */
  readonly lacks: string;
}

const figureWords = ({ value, doubt }: Judged): string => {
  if (isProblem(value)) return "";
  return doubt === undefined ? digits(value, 3) : doubtText(computed(value), doubt, 2);
};

export function Result({ name, unit, found, lacks }: ResultProps) {
  const inMark = useMark();
  if (isProblem(found.value)) return <Say tone="check">{inMark(say(found.value))}</Say>;
  return (
    <>
      <p className="fuel-figure">
        {name}: <strong>{inMark(`${figureWords(found)} ${unit}`)}</strong>
      </p>
      {found.words === undefined ? (
        <Say tone="check">{lacks}</Say>
      ) : (
        <Say tone={found.verdict === "below" ? "know" : "check"}>
          {inMark(capital(found.words))}
        </Say>
      )}
    </>
  );
}

export function Plain({ name, unit, found }: { name: string; unit: string; found: Shown }) {
  const inMark = useMark();
  if (isProblem(found)) return <Say tone="check">{inMark(say(found))}</Say>;
  return (
    <p className="fuel-figure">
      {name}: <strong>{inMark(`${digits(found, 3)} ${unit}`)}</strong>
    </p>
  );
}
