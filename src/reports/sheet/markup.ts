/** Makes HTML in which no text can be anything but text: what is put into a template is escaped unless it is markup itself. */
import { visible } from '../text.js';

/** HTML that this file made. */
export class Markup {
  constructor(readonly html: string) {}
}

type Value = string | number | Markup | readonly Markup[];

/** A tagged template. Characters that turn the direction of text or cannot be seen are shown as pictures of themselves. */
export function markup(parts: TemplateStringsArray, ...values: readonly Value[]): Markup {
  return new Markup(parts.reduce((html, part, index) => html + htmlOf(values[index - 1]!) + part));
}

/** Style and script of our own, which have no place for escapes. */
export function verbatim(text: string): Markup {
  return new Markup(text);
}

function htmlOf(value: Value): string {
  if (value instanceof Markup) return value.html;
  if (typeof value === 'object') return value.map(({ html }) => html).join('');
  return visible(String(value)).replace(/[&<>"'`]/g, (character) => `&#${character.charCodeAt(0)};`);
}
