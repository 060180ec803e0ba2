/** Knows how text stands in a terminal: what can be seen, how wide it is, where it breaks. */

/** No character of the author's text may steer the terminal: each that would is replaced by one that can be seen. */
export function visible(text: string): string {
  return text.replace(unseen, picture);
}

/** The text on one line: line ends, tabs and runs of spaces are one space, the rest is visible. */
export function oneLine(text: string): string {
  return visible(text.replace(/\s+/gu, ' ').trim());
}

/** How many columns of a terminal the text takes. */
export function displayWidth(text: string): number {
  let columns = 0;
  for (const character of text) columns += characterWidth(character);
  return columns;
}

/** The text, cut at the end with "…" when it is wider than `columns`. */
export function clip(text: string, columns: number): string {
  let used = 0;
  let kept = '';
  let keptShort = '';
  for (const character of text) {
    used += characterWidth(character);
    if (used > columns) return `${keptShort.trimEnd()}…`;
    kept += character;
    if (used <= columns - 1) keptShort = kept;
  }
  return text;
}

/** The text in lines no wider than `columns`, broken at spaces; a word that is wider by itself is broken too. */
export function wrap(text: string, columns: number): string[] {
  const lines: string[] = [];
  let line = '';
  let width = 0;
  for (const word of oneLine(text).split(' ')) {
    for (const piece of pieces(word, columns)) {
      const wide = displayWidth(piece);
      if (line !== '' && width + 1 + wide > columns) {
        lines.push(line);
        line = '';
        width = 0;
      }
      line = line === '' ? piece : `${line} ${piece}`;
      width += (width === 0 ? 0 : 1) + wide;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}

/** The spaces that bring text of this width to `columns`. */
export function fill(width: number, columns: number): string {
  return ' '.repeat(Math.max(0, columns - width));
}

/** Controls, halves of a surrogate pair, and the characters that turn the direction of text or take no room. */
const unseen = /[\p{Cc}\p{Cs}\u061C\u200B\u200E\u200F\u2028-\u202E\u2060-\u2069\uFEFF]/gu;

/** Unicode's control pictures begin at U+2400; what they leave out is shown as U+2426, the symbol for a substitute. */
function picture(character: string): string {
  const code = character.charCodeAt(0);
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  return code === 0x7f ? '\u2421' : '\u2426';
}

/** Combining marks and joiners stand on the character before them. */
const takesNoRoom = /^[\p{M}\u200C\u200D]$/u;

/** The East Asian scripts and pictures that terminals draw two columns wide (Unicode Standard Annex 11, its main blocks). */
const takesTwo =
  /^[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF01-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1F64F}\u{1F680}-\u{1F6FF}\u{1F900}-\u{1F9FF}\u{20000}-\u{3FFFD}]$/u;

function characterWidth(character: string): number {
  if (character.length === 1 && character.charCodeAt(0) < 0x300) return 1;
  if (takesNoRoom.test(character)) return 0;
  return takesTwo.test(character) ? 2 : 1;
}

function pieces(word: string, columns: number): string[] {
  if (word.length * 2 <= columns || displayWidth(word) <= columns) return [word];
  const parts: string[] = [];
  let part = '';
  let width = 0;
  for (const character of word) {
    const wide = characterWidth(character);
    if (width + wide > columns && part !== '') {
      parts.push(part);
      part = '';
      width = 0;
    }
    part += character;
    width += wide;
  }
  parts.push(part);
  return parts;
}
