/** Turns the bytes of a file into text, or says why they are no text and what to do. */
import { isUtf8 } from 'node:buffer';

export function decode(bytes: Uint8Array): { text: string } | { what: string; remedy: string } {
  if (isUtf16(bytes)) return { what: 'it is in UTF-16', remedy: 'save it as UTF-8' };
  const nul = bytes.indexOf(0);
  if (nul >= 0) {
    return {
      what: `it is not text (byte ${nul + 1} is NUL)`,
      remedy: 'name Markdown files, or leave it out',
    };
  }
  if (!isUtf8(bytes)) {
    return { what: `line ${wrongLine(bytes)} is not valid UTF-8`, remedy: 'save the file as UTF-8' };
  }
  // The byte-order mark stays: offsets count it.
  return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
}

function isUtf16(bytes: Uint8Array): boolean {
  return (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
}

/** The first line, from 1, that is not UTF-8. No character of UTF-8 holds the byte of a line end, so lines can be tried one by one. */
function wrongLine(bytes: Uint8Array): number {
  let line = 1;
  let start = 0;
  for (;;) {
    const end = bytes.indexOf(10, start);
    if (end < 0 || !isUtf8(bytes.subarray(start, end))) return line;
    line++;
    start = end + 1;
  }
}
