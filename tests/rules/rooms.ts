/** The rooms of src, from the ground up, and what each may import: see the map in DEVELOPERS.md. */

export interface Room {
  readonly at: string;
  /** Rooms below it that it leaves alone. */
  readonly not?: readonly string[];
  /** Of all that is below it, these alone. */
  readonly only?: readonly string[];
}

/** Whatever reads formulas and files knows which names are ours, and not what they work out. */
const namesOnly = ["src/functions/names", "src/core"];

/** A room may import from every room before it; what it may not, although it could, stands beside it. */
const rooms: readonly Room[] = [
  { at: "src/core" },
  { at: "src/functions" },
  { at: "src/sheet", only: namesOnly },
  { at: "src/xlsx", only: ["src/sheet", ...namesOnly] },
  { at: "src/partner" },
  // beside each other: a copy for somebody else, and somebody else's logbook
  { at: "src/adopt", only: ["src/xlsx", "src/sheet", ...namesOnly] },
  { at: "src/workbook" },
  { at: "src/host/excel", only: ["src/sheet"] },
  // the pane reaches a spreadsheet through the port of src/sheet alone
  { at: "src/taskpane", not: ["src/host"] },
  // one room, of which the engine and its host can do without the page
  { at: "src/workbench/engine", only: ["src/workbench", "src/sheet", "src/functions", "src/core"] },
  {
    at: "src/host/workbench",
    only: ["src/workbench/engine", "src/workbench/look", "src/sheet"],
  },
  { at: "src/workbench" },
  { at: "src/help", not: ["src/host", "src/taskpane", "src/workbench"] },
  // the engine works out what stands in the sample workbooks
  {
    at: "src/cli",
    not: ["src/host", "src/taskpane", "src/workbench"],
  },
];

/** Single files that go where their room may not. */
export const exceptions: readonly (readonly [file: string, target: string, why: string])[] = [
  ["src/taskpane/start.tsx", "src/host/excel", "it alone knows which program the pane is in"],
  ["src/cli", "src/workbench/engine", "it works out what stands in the sample workbooks"],
];

export const isWithin = (path: string, part: string): boolean =>
  path === part || path.startsWith(`${part}/`) || path.startsWith(`${part}.`);

/** The room a file is in: the smallest that holds it. */
export const roomOf = (path: string): Room | undefined =>
  rooms.filter(({ at }) => isWithin(path, at)).sort((a, b) => b.at.length - a.at.length)[0];

export function mayImport(path: string, target: string): boolean {
  const room = roomOf(path);
  const other = roomOf(target);
  if (!room || !other) return false;
  if (exceptions.some(([file, to]) => isWithin(path, file) && isWithin(target, to))) return true;
  if (room === other) return true;
  if (room.only) return room.only.some((part) => isWithin(target, part));
  const isBelow = rooms.indexOf(other) < rooms.indexOf(room);
  return isBelow && !(room.not ?? []).some((part) => isWithin(target, part));
}
