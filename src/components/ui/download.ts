/** Hands the user a file. */
export function download(fileName: string, content: BlobPart, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  link.click();
  // The browser reads the blob after this turn of the event loop.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Asks for files; resolves to none when the user thinks better of it. */
export function chooseFiles(accept: string, multiple: boolean): Promise<File[]> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.multiple = multiple;
    input.addEventListener('change', () => resolve([...(input.files ?? [])]));
    input.addEventListener('cancel', () => resolve([]));
    input.click();
  });
}

/** A file name from a title: letters, digits and hyphens. */
export function fileNameOf(title: string, ending: string): string {
  const stem = title
    .normalize('NFKD')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part !== '')
    .join('-')
    .toLowerCase();
  return `${stem === '' ? 'untitled' : stem}.${ending}`;
}
