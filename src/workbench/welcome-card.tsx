/** Start here: the two ways a newcomer may go. */
import type { Ways } from "./welcome";

export function WelcomeCard({ ways }: { ways: Ways }) {
  return (
    <section className="welcome" aria-labelledby="welcome">
      <h2 id="welcome">Start here</h2>
      <p>
        This is the logbook of a ferry co-operative, as an example. Nothing leaves this machine. Two
        ways to go on:
      </p>
      <button type="button" onClick={() => ways.look()}>
        Look at the example
      </button>
      <button type="button" onClick={() => ways.begin()}>
        Begin my own logbook
      </button>
    </section>
  );
}
