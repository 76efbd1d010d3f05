/** What else stands on the sheets and was not taken for a logbook: any of it may be, when a person says so. */
import { PickList } from "../../widgets/pick-list";
import type { ReadTable } from "../found-table";
import type { Action } from "../state";

interface OthersProps {
  readonly others: readonly ReadTable[];
  readonly act: (action: Action) => void;
}

const nameOf = ({ guess: { sheet, place } }: ReadTable): string =>
  `${sheet}, headings in row ${String(place.headingRow + 1)}`;

export function Others({ others, act }: OthersProps) {
  if (others.length === 0) return null;
  return (
    <details className="more">
      <summary>Another table is the logbook</summary>
      <PickList
        label="Table"
        value=""
        options={[["", "Choose"], ...others.map((each, at) => [String(at), nameOf(each)] as const)]}
        onPick={(at) => {
          if (at !== "") act({ do: "take", other: Number(at) });
        }}
      />
    </details>
  );
}
