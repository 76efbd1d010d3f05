/** What day and what time it is, where the person sits. */
import { serialOf } from "./convert";
import { ofValues, type Standard } from "./adapter";

const daySeconds = 86_400;

/** Today, as spreadsheets count days. */
function today(): number {
  const now = new Date();
  return serialOf(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

function timeOfDay(): number {
  const now = new Date();
  const seconds = now.getHours() * 3600 + now.getMinutes() * 60 + now.getSeconds();
  return (seconds + now.getMilliseconds() / 1000) / daySeconds;
}

export const clock: Readonly<Record<string, Standard>> = {
  TODAY: ofValues(0, 0, today),
  NOW: ofValues(0, 0, () => today() + timeOfDay()),
};
