/** The bases to be compared, each with its own assay and charge: no two lyes are alike. */
import { Checkbox } from "@fluentui/react-components";
import { baseChoices } from "../../fields/bases";
import { Charges } from "./charges";
import { Figure, useDesk } from "./desk";

export function Bases() {
  const { view, act } = useDesk();
  const chosen = view.draft.bases;
  return (
    <fieldset className="ticks">
      <legend>Bases to compare</legend>
      {baseChoices.map(([base, words]) => (
        <div key={base}>
          <Checkbox
            size="large"
            label={words}
            checked={chosen.includes(base)}
            onChange={(_, { checked }) => {
              act({ do: "choose-base", base, isChosen: checked === true });
            }}
          />
          {chosen.includes(base) ? (
            <div role="group" aria-label={base} className="own-figures">
              <div className="side-by-side">
                <Figure field={`assay${base}`} />
                <Figure field={`charge${base}`} />
              </div>
              <Charges
                base={base}
                onTake={(text) => {
                  act({ do: "type", field: `charge${base}`, text });
                }}
              />
            </div>
          ) : null}
        </div>
      ))}
    </fieldset>
  );
}
