/** A kept workbook is given up, by hand; with its drafts, where it was nowhere else. */
import { isNowhereElse } from "./drafts-of";
import type { Entry } from "./entry";
import type { KeptWorkbooks } from "./store";

export async function forgetKept(
  { id, name, drafts, isInFile }: Entry,
  store: Pick<KeptWorkbooks, "all" | "draftsOf" | "forget">,
  forgetDrafts: (drafts: string) => Promise<void>,
): Promise<void> {
  await store.forget(id);
  if (!isNowhereElse(isInFile, drafts)) return;
  // saved once, and edited since: the file is there still; or a second tab has made one of its own of it
  const isInAFile = (await store.draftsOf(name)) === drafts;
  const isInAnother = (await store.all()).some((each) => each.drafts === drafts);
  if (!isInAFile && !isInAnother) await forgetDrafts(drafts);
}
