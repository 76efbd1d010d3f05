/** Opens what this browser kept. */
import type { Kept } from "../keeping/entry";
import type { Keeper } from "../keeping/keeper";
import type { Files } from "./files";

/** False where it could not be opened, and one is told why. */
export async function reopen(
  { entry, bytes }: Kept,
  files: Pick<Files, "open">,
  keeper: Keeper,
): Promise<boolean> {
  const file = new File([bytes as Uint8Array<ArrayBuffer>], entry.name);
  keeper.comes(entry);
  await files.open(file, { entry });
  keeper.comes(undefined);
  return keeper.id === entry.id;
}
