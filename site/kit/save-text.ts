/** Gives *text* to the reader as a file of this name. */
export function saveText(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers begin to read it a moment later.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
