/** Hands bytes over as a file of the given name: nothing is sent anywhere. */
const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Milliseconds a browser may take to begin. */
const begun = 60_000;

export function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: kind }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), begun);
}
