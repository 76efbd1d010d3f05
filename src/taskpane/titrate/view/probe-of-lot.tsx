/** The probe, on the readings that this lot's draft keeps. */
import type { Host } from "../../../sheet/port";
import { OnRequest } from "../../planned/on-request";
import { Probe } from "../../probe/probe";
import { withMark } from "../../widgets/typed-number";
import { useDesk } from "./desk";

export function ProbeOfLot({ host }: { host: Host }) {
  const { view, act } = useDesk();
  const { words } = view.draft;
  return (
    <OnRequest words="A probe for dark oil" closeWords="Close the probe">
      {() => (
        <Probe
          host={host}
          lot={words.lot.trim()}
          text={words.probe}
          mark={view.mark}
          onText={(probe) => {
            act({ do: "write", words: { probe } });
          }}
          onTitre={(titre) => {
            act({ do: "type", field: "used", text: withMark(titre, view.mark) });
          }}
        />
      )}
    </OnRequest>
  );
}
