/** What a result is worth, in a word, and why. */
import type { Draft } from "./draft";
import type { Working } from "./working";

export interface Worth {
  readonly word: "Good" | "Usable" | "Not yet";
  /** What keeps it from the better word; a sentence each. */
  readonly why: readonly string[];
}

/** What stands against any use of it. */
function against({ judgement, titres }: Working): string[] {
  if (titres.length === 1) return ["One titre, and nothing to compare it with: titrate again."];
  return judgement?.agrees === false ? [judgement.verdict] : [];
}

/** What the ± does not count. */
function uncounted({ doubt, strength }: Working, draft: Draft): string[] {
  return [
    ...(doubt ? [] : ["Its ± is not known yet."]),
    ...(strength?.percent ? [] : ["The titrant’s own doubt is not in the ± yet."]),
    ...(draft.picked.sample === "by volume" ? ["The sample was measured, not weighed."] : []),
  ];
}

/** @param working with a result */
export function worthOf(working: Working, draft: Draft): Worth {
  const no = against(working);
  if (no.length > 0) return { word: "Not yet", why: no };
  const less = uncounted(working, draft);
  return less.length > 0 ? { word: "Usable", why: less } : { word: "Good", why: [] };
}
