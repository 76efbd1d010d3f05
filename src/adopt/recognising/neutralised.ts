/** What says in a blank's cell that the solvent took nothing. */
export const isNeutralised = (text: string): boolean =>
  /^(?:0+(?:[.,]0+)?|nil|neutrali[sz]ed)$/i.test(text.trim());
