/** A text as UTF-8, in the letters of base64 in which files travel to the page. */
export const base64Of = (content: string | Uint8Array): string =>
  (typeof content === 'string'
    ? Buffer.from(content)
    : Buffer.from(content.buffer, content.byteOffset, content.byteLength)
  ).toString('base64');
