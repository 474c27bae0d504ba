/** A text as UTF-8, in the letters of base64 in which files travel to the page. */
export const base64Of = (content: string | Uint8Array): string =>
  (typeof content === 'string'
    ? Buffer.from(content)
    : Buffer.from(content.buffer, content.byteOffset, content.byteLength)
  ).toString('base64');

export const bytesOf = (base64: string): Uint8Array => Uint8Array.from(Buffer.from(base64, 'base64'));
