/** On a field that wants something and has nothing right in it yet: Enter comes to it (`stepped/wanted-field.ts`). */
export const wantedMark = (isWanted: boolean): { "data-wanted"?: "" } =>
  isWanted ? { "data-wanted": "" } : {};
