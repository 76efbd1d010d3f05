/** The colours of two end points in one flask, drawn: each named in words below it. */
interface Stage {
  readonly colour: string;
  readonly name: string;
  readonly then: string;
}

const stages: readonly Stage[] = [
  { colour: "#e0569b", name: "Pink", then: "phenolphthalein in: free base" },
  { colour: "#fbf6e6", name: "Colourless", then: "first end point" },
  { colour: "#3d63c9", name: "Blue", then: "bromophenol blue in: soap" },
  { colour: "#f2d21b", name: "Yellow", then: "second end point" },
];

/** An Erlenmeyer flask, filled to its shoulder. */
function Flask({ colour }: { colour: string }) {
  return (
    <svg viewBox="0 0 48 56" width="48" height="56" aria-hidden="true" focusable="false">
      <path d="M15 26 L5 50 Q4 54 8 54 L40 54 Q44 54 43 50 L33 26 Z" fill={colour} />
      <path
        d="M17 2 L31 2 M19 2 L19 18 L5 50 Q4 54 8 54 L40 54 Q44 54 43 50 L29 18 L29 2"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.5"
        strokeLinejoin="round"
      />
    </svg>
  );
}

export function Colours() {
  return (
    <ol className="fuel-colours" aria-label="Colours in the flask, one after another">
      {stages.map(({ colour, name, then }) => (
        <li key={name}>
          <Flask colour={colour} />
          <span>
            <strong>{name}</strong>
            <br />
            {then}
          </span>
        </li>
      ))}
    </ol>
  );
}
