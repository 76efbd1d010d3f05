/** What works on files: fetched when it is first needed, since most who look at the page never open one. */
import type { GridState } from "../file/grid-state";
import type { Session } from "../file/session";
import type { Grid } from "../grid/mount";
import { affectedIn } from "./held-list";
import { sampleBytes, sampleFile } from "./sample-file";

/** Bytes from which laying out a file keeps the page busy for more than a moment. */
export const largeFile = 300_000;

export const filePart = () => import(/* webpackChunkName: "files" */ "../file");

/** @param sample what the grid held once the sample was worked out */
export async function sampleSession(sample: GridState, grid: Grid): Promise<Session> {
  const { Session } = await filePart();
  return Session.ofSample(sampleFile, sampleBytes, sample, affectedIn(grid));
}
