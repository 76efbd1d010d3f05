/** The file as it is saved, put where it goes, and what one is told of that. */
import { isRefused, type Refusal } from "../../sheet/refusal";
import type { GridState } from "../file/grid-state";
import type { Session, Writing } from "../file/session";
import type { FileOnDisk } from "../keeping/file-on-disk";
import { type SavePlace, writeInto } from "./disk";
import { download } from "./download";
import { downloadName } from "./download-name";

interface Put {
  readonly says: string;
  readonly disk?: FileOnDisk | undefined;
}

async function deliver(bytes: Uint8Array, name: string, place: SavePlace): Promise<Put | Refusal> {
  if (place === "downloads") {
    const as = downloadName(name, new Date());
    download(bytes, as);
    return { says: `Saved as ${as}, in your downloads.` };
  }
  const disk = await writeInto(place, bytes);
  return isRefused(disk) ? disk : { says: `Saved in the file ${disk.handle.name}.`, disk };
}

/** From then on the session is that of the saved file. */
export async function savedInto(
  session: Session,
  now: GridState,
  place: SavePlace,
): Promise<(Writing & Put) | Refusal> {
  const written = await session.written(now);
  if (isRefused(written)) return written;
  const put = await deliver(written.bytes, session.name, place);
  if (isRefused(put)) return put;
  session.name = put.disk?.handle.name ?? session.name;
  await session.keep(now, written.arrays);
  return { ...written, ...put };
}
