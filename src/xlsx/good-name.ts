/** What a defined name, or the name of a table, may be. */
const pattern = /^[\p{L}_\\][\p{L}\p{N}_.\\?]{0,254}$/u;
const likeCell = /^(?:[a-z]{1,3}\d{1,7}|r\d*c\d*|r\d*|c\d*)$/i;

/** A name that no program takes for anything else. */
export const isGoodName = (name: string): boolean => pattern.test(name) && !likeCell.test(name);
