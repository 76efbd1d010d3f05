/** The three cautions for the work in hand, and the whole list at a press; on paper the whole list. */
import { aboutCautions, cautions, cautionsFor, type Work } from "../../core/batch/cautions";
import { Together } from "./together";

const List = ({ words }: { words: readonly string[] }) => (
  <ul>
    {words.map((each) => (
      <li key={each}>
        <Together>{each}</Together>
      </li>
    ))}
  </ul>
);

export function Cautions({ work }: { work: Work }) {
  return (
    <section className="safety" aria-label="Safety">
      <p className="safety-title">
        <span aria-hidden="true">⚠</span> Safety
      </p>
      <div className="cautions-now">
        <List words={cautionsFor(work)} />
      </div>
      <details className="more cautions">
        <summary>All {String(cautions.length)} cautions</summary>
        <List words={cautions} />
        <p className="soft">{aboutCautions}</p>
      </details>
    </section>
  );
}
