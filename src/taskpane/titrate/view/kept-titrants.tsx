/** The titrants of the table Titrants, each a button that takes it into this titration. */
import { Together } from "../../widgets/together";
import { isTaken, type Offer } from "../titrants/kept-titrants";
import { useDesk, useMark } from "./desk";

export function KeptTitrants({ offers }: { offers: readonly Offer[] }) {
  const { view, act } = useDesk();
  const inMark = useMark();
  if (offers.length === 0) return null;
  return (
    <fieldset className="offers">
      <legend>Kept in Titrants</legend>
      {offers.map((offer) => (
        <button
          key={`${offer.name} ${offer.about}`}
          type="button"
          className="offer"
          aria-pressed={isTaken(offer, view.draft, inMark)}
          onClick={() => {
            const { taken } = offer;
            const [strength, percent] = [inMark(taken.strength), inMark(taken.percent)];
            act({ do: "take-titrant", taken: { ...taken, strength, percent } });
          }}
        >
          <strong>{inMark(offer.name)}</strong>
          <span className="unseen">. </span>
          <span className="soft">
            <Together>{inMark(offer.about)}</Together>
          </span>
        </button>
      ))}
    </fieldset>
  );
}
