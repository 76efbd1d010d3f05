/** One finding: what is held, what should be, what it did, and the way to the cell. */
import { Button } from "@fluentui/react-components";
import type { Finding } from "../../../adopt/recheck/reporting/finding";
import { Together } from "../../widgets/together";
import { effectWords } from "../effect-words";
import { figureWords, heldWords } from "../listed";
import type { rowLine } from "../row-line";

interface OneProps {
  readonly finding: Finding;
  /** What its row holds beside. */
  readonly row: ReturnType<typeof rowLine>;
  readonly inMark: (text: string) => string;
  readonly onJump: (finding: Finding) => void;
}

export function One({ finding, row, inMark, onJump }: OneProps) {
  const { address, heading, label, fromRow, formula, unit } = finding;
  return (
    <li className="finding">
      <h3>
        {address}
        {label === "" ? "" : `, ${label}`}
      </h3>
      <p>
        <Together>
          {heading}: {inMark(figureWords(finding))}.
        </Together>
      </p>
      <dl className="row-line">
        {row.map(({ column, heading: of, shown }) => (
          <div key={column}>
            <dt>{of}</dt>
            <dd>{inMark(shown)}</dd>
          </div>
        ))}
        <div className="is-held">
          <dt>{heading}, as held</dt>
          <dd>{inMark(`${heldWords(finding)} ${unit}`)}</dd>
        </div>
        <div className="is-right">
          <dt>right</dt>
          <dd>{inMark(`${finding.should} ${unit}`)}</dd>
        </div>
      </dl>
      <p>
        <Together>{inMark(effectWords(finding))}</Together>
      </p>
      {fromRow === undefined ? null : (
        <p className="soft">Made in the titration of row {fromRow}.</p>
      )}
      {formula === "" ? null : (
        <p className="soft">
          Its formula shows it: <code>{formula}</code>
        </p>
      )}
      <Button
        size="large"
        onClick={() => {
          onJump(finding);
        }}
      >
        Go to {address}
      </Button>
    </li>
  );
}
