/** What standards ask of the fuel, as context: oil is not fuel, and nothing here is judged by it. */
import { aboutSoap, fuelEditions, fuelLimits } from "../../../core/reference/fuel-limits";
import { useMark } from "./desk";

export function FinishedFuel() {
  const inMark = useMark();
  return (
    <details className="more">
      <summary>What finished fuel is held to</summary>
      <p className="soft">
        For context alone: this is oil, not fuel. At most, by{" "}
        {`${fuelEditions.astm} and ${fuelEditions.en}; look up`} the edition in force where you are.
      </p>
      <dl className="cells">
        {fuelLimits.map(({ property, astm, en }) => (
          <div key={property}>
            <dt>{property}</dt>
            <dd>
              {inMark(`ASTM ${astm}`)}
              <br />
              {inMark(`EN ${en}`)}
            </dd>
          </div>
        ))}
      </dl>
      <p className="soft">{aboutSoap}</p>
    </details>
  );
}
