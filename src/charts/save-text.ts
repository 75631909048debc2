/** Hands the reader a text as a file to keep. */
export function saveText(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers fetch the text only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
