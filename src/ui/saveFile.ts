/** Offers content to the browser as a download. */
export function saveBlob(fileName: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}

/** Offers text or bytes to the browser as a download. */
export function saveFile(fileName: string, content: BlobPart, type: string): void {
  saveBlob(fileName, new Blob([content], { type }));
}
