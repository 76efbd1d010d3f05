/** Which gallon: one choice for all columns that are in it. */
import { type Nation, nations } from "../../../core/quantity/measures";
import { nationOf } from "../../../adopt/recognising/measures/measured";
import { andList } from "../../../sheet/and-list";
import { Choice } from "../../widgets/choice";
import type { FoundTable } from "../found-table";
import type { Action } from "../state";
import { inGallons, madeOf, measuresOf } from "../whose-gallons";

const words: Readonly<Record<Nation, string>> = {
  US: "US (a gallon is 3.785 L)",
  imp: "Imperial (4.546 L)",
};

const many: Readonly<Record<string, string>> = {
  gal: "gallons",
  quart: "quarts",
  pint: "pints",
  "fl oz": "fluid ounces",
};

interface WhichGallonProps {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
}

export function WhichGallon({ table, act }: WhichGallonProps) {
  const columns = inGallons(table);
  if (columns.length === 0) return null;
  const measures = measuresOf(columns).map((measure) => many[measure] ?? measure);
  return (
    <Choice
      label={`Which ${andList(measures)} are these?`}
      value={nationOf(columns) ?? ""}
      options={nations.map((nation) => [nation, words[nation]] as const)}
      onPick={(nation) => {
        madeOf(columns, nation).forEach(act);
      }}
    />
  );
}
