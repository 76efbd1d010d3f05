/** The probe, on the readings that this lot's draft keeps. */
import type { Host } from "../../../sheet/port";
import { OnRequest } from "../../planned/on-request";
import { Probe } from "../../probe/probe";
import { withMark } from "../../widgets/typed-number";
import { isBlankByColour, puttingIn, titreOfCurve } from "../probe-put";
import { useDesk } from "./desk";

export interface ProbeOfLotProps {
  readonly host: Host;
  /** Its end point stands in the entry of the next titre. */
  readonly onPutIn: () => void;
}

export function ProbeOfLot({ host, onPutIn }: ProbeOfLotProps) {
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
          titre={titreOfCurve(view.draft)}
          last={words.probePut}
          isBlankByColour={isBlankByColour(view.draft)}
          onTitre={(titre) => {
            act({ do: "write", words: puttingIn(view.draft) });
            // a probe reads what was given, and no start and end
            act({ do: "pick-once", picked: { reading: "used", indicator: "pH meter" } });
            act({ do: "type", field: "used", text: withMark(titre, view.mark) });
            onPutIn();
          }}
        />
      )}
    </OnRequest>
  );
}
