/** Published base charges to take, each with its source. None is taken for granted. */
import "./fields.css";
import { Button } from "@fluentui/react-components";
import { type PublishedCharge, publishedCharges } from "../../core/reference/base-charges";
import type { Base } from "../../core/reference/bases";
import { sources } from "../../core/reference/sources";

export interface PublishedChargesProps {
  readonly base: Base["name"];
  readonly isOpen: boolean;
  /** Before its explanation: "7 g/L". */
  readonly level: (charge: PublishedCharge) => string;
  /** On its button, where the whole level is too long for one. */
  readonly use?: (charge: PublishedCharge) => string;
  readonly inMark: (text: string) => string;
  readonly onTake: (charge: PublishedCharge) => void;
}

export function PublishedCharges({
  base,
  isOpen,
  level,
  use = level,
  inMark,
  onTake,
}: PublishedChargesProps) {
  const charges = publishedCharges.filter((each) => each.base === base);
  return (
    <details className="more" open={isOpen}>
      <summary>Published base charges of {base}</summary>
      {charges.length === 0 ? (
        <p>No charge is known here for {base}: ask who sold it.</p>
      ) : (
        <p>Choose one; all mean pure base.</p>
      )}
      <ul className="published">
        {charges.map((charge) => (
          <li key={`${charge.amount} ${charge.unit} ${charge.source}`}>
            <span>
              <strong>{inMark(level(charge))}</strong>: {inMark(charge.about)}.{" "}
              <span className="soft">{sources[charge.source]}</span>
            </span>
            <Button
              size="large"
              aria-label={inMark(`Use ${use(charge)}, ${charge.about}`)}
              onClick={() => {
                onTake(charge);
              }}
            >
              {inMark(`Use ${use(charge)}`)}
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}
