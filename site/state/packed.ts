/** *text* deflated, in letters that an address may have. */
export async function packed(text: string): Promise<string> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return lettersOf(new Uint8Array(await new Response(stream).arrayBuffer()));
}

/** What {@link packed} made. Throws for what is not packed so, and as soon as it turns out longer than *most* letters. */
export async function unpacked(letters: string, most: number): Promise<string> {
  const reader = new Blob([bytesOf(letters)]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    text += decoder.decode(value, { stream: true });
    if (text.length > most) {
      await reader.cancel();
      throw new RangeError('larger than anything that was packed here');
    }
  }
}

function lettersOf(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');
}

function bytesOf(letters: string): Uint8Array<ArrayBuffer> {
  const binary = atob(letters.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}
