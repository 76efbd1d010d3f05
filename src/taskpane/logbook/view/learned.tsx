/** It is read as a logbook under the same headings was: said, and taken back at a press. */
import { Button } from "@fluentui/react-components";
import { Say } from "../../widgets/say";
import type { FoundTable } from "../found-table";
import type { Action } from "../state";

export function Learned({
  table,
  act,
}: {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
}) {
  if (table.learned === undefined) return null;
  return (
    <>
      <Say tone="know">
        Read as in {table.learned}, whose columns under the same headings were agreed to before.
      </Say>
      <Button
        size="large"
        className="wide"
        onClick={() => {
          act({ do: "afresh" });
        }}
      >
        Read it afresh
      </Button>
    </>
  );
}
