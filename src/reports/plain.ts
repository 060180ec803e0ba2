/** Writes a reading as one line a mark, in the GNU coding standards' form, for editors and pipes. */
import type { Mark } from '../../rules/rule.js';
import type { Reading } from '../reading/types.js';
import { placesOf } from './places.js';
import { oneLine } from './text.js';

/** `FILE:LINE:COLUMN: weight: message advice [rule]`, each on its own line; nothing at all where there are no marks. */
export function plain(reading: Reading): string {
  const places = placesOf(reading);
  const line = (mark: Mark): string => {
    const { line, column } = places.place(mark.file, mark.span.start);
    const text = oneLine(`${mark.message} ${mark.advice}`);
    return `${oneLine(mark.file)}:${line}:${column}: ${mark.weight}: ${text} [${mark.rule}]\n`;
  };
  return reading.marks.map(line).join('');
}
