/** Which way this oil can go, from its acid and from its water, if that was measured. */
import { route } from "../../core/batch/route";
import { isProblem } from "../../core/problem/problem";
import type { Seen } from "./seen";

/** @returns undefined until the acid of the mix and the allowed acid are known */
export function routeOf({ figures, working: { mix } }: Seen): string | undefined {
  const limit = figures.in("%", "limit");
  if (mix === undefined || isProblem(mix) || limit === undefined) return undefined;
  return route(mix.acidValue, figures.in("%", "water"), limit);
}
