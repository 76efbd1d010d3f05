/** The names of functions, as cells show them and as files hold them. */
import { namespace } from "../../functions/names";
import type { Call } from "./tree";

/** Marks a file puts before functions newer than the file format. */
const fileMarks = /^(?:_xlfn\.|_xlws\.|_xludf\.)+/i;

/** STDEV.S for _xlfn.STDEV.S; FILTER for _xlfn._xlws.FILTER. In capitals. */
export const plainName = (written: string): string => written.replace(fileMarks, "").toUpperCase();

/** How files hold a function of an add-in: the dot of the namespace becomes a low line. */
export const storedName = (id: string): string => `_xldudf_${namespace}_${id}`;

const shown = new RegExp(`^${namespace}\\.([A-Z][A-Z0-9]*)$`, "i");
const stored = new RegExp(`^_xldudf_${namespace}_([A-Z][A-Z0-9]*)$`, "i");
/**
 * Another add-in can make a file hold ours as a link: [2]!_xldudf_..., or 'C:/Add-ins/X.xla'!_xldudf_...,
 * in which the mark before the name says whose it is, whatever file the link names.
 */
const numberedLink = /^'?\[\d+\]'?!$/;

/** The id of one of our functions from its name, in either spelling and any case: DOSE. */
export const titreIdOf = (written: string): string | undefined =>
  (shown.exec(written) ?? stored.exec(written))?.[1]?.toUpperCase();

/**
 * The id of the function of ours that a call calls, whether or not there is one of that name.
 * @param link what stands before the name, exclamation mark and all; "" for nothing
 */
export const linkedId = (link: string, name: string): string | undefined =>
  link === "" || numberedLink.test(link) ? titreIdOf(name) : stored.exec(name)?.[1]?.toUpperCase();

export const titreCallId = ({ link, name }: Call): string | undefined => linkedId(link, name);
