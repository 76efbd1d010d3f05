/** One finding: what is held, what should be, what it did, and the way to the cell. */
import { Button } from "@fluentui/react-components";
import type { Finding } from "../../../adopt/recheck/reporting/finding";
import { Together } from "../../widgets/together";
import { causeWords, effectWords, figureWords } from "../listed";

interface OneProps {
  readonly finding: Finding;
  readonly inMark: (text: string) => string;
  readonly onJump: (finding: Finding) => void;
}

export function One({ finding, inMark, onJump }: OneProps) {
  const { address, heading, label, fromRow, formula } = finding;
  return (
    <li className="finding">
      <h3>{causeWords(finding)}</h3>
      <p>
        <Together>
          {heading}
          {label === "" ? "" : ` of ${label}`}: {inMark(figureWords(finding))}.
        </Together>
      </p>
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
