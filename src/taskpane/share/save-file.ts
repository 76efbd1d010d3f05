/** Hands a file over to the browser, which saves it as it saves any other. */
const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** An address that only this page knows; to be given back with forgetFile. */
export const addressOf = (bytes: Uint8Array): string =>
  URL.createObjectURL(new Blob([bytes.slice()], { type }));

export const forgetFile = (address: string): void => {
  URL.revokeObjectURL(address);
};
