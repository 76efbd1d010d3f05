/** The open workbook as an .xlsx file, which the program hands out in slices; and a file as it takes one in. */

const settled =
  <T>(resolve: (value: T) => void, reject: (error: Error) => void) =>
  (result: Office.AsyncResult<T>): void => {
    if (result.status === Office.AsyncResultStatus.Succeeded) resolve(result.value);
    else reject(new Error(result.error.message));
  };

const openFile = (): Promise<Office.File> =>
  new Promise((resolve, reject) => {
    Office.context.document.getFileAsync(Office.FileType.Compressed, settled(resolve, reject));
  });

const slice = (file: Office.File, index: number): Promise<Office.Slice> =>
  new Promise((resolve, reject) => {
    file.getSliceAsync(index, settled(resolve, reject));
  });

export async function wholeFile(): Promise<Uint8Array> {
  const file = await openFile();
  try {
    const bytes = new Uint8Array(file.size);
    let filled = 0;
    for (let index = 0; index < file.sliceCount; index += 1) {
      const { data, size } = await slice(file, index);
      bytes.set(data as Uint8Array, filled);
      filled += size;
    }
    return bytes;
  } finally {
    // Two files at most may be open at a time.
    file.closeAsync();
  }
}

/** Few enough bytes to be the arguments of one call. */
const atOnce = 0x8000;

export function base64(bytes: Uint8Array): string {
  let text = "";
  for (let from = 0; from < bytes.length; from += atOnce) {
    text += String.fromCharCode(...bytes.subarray(from, from + atOnce));
  }
  return btoa(text);
}
