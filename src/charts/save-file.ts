/** Hands the reader a file to keep. */
export function saveFile(name: string, content: Blob): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers fetch the content only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

export const saveCsv = (name: string, text: string): void =>
  saveFile(name, new Blob([text], { type: 'text/csv;charset=utf-8' }));
