/** Helpers of the manuscript tests: every passage of a page, and the check that its words stand where it says. */
import { openPage } from '../../src/manuscript/page.js';
import type { Passage } from '../../src/manuscript/passage.js';
import type { Block, Page } from '../../src/manuscript/types.js';

export function page(text: string): Page {
  return openPage({ path: 'page.md', text });
}

export function passages(blocks: readonly Block[]): Passage[] {
  return blocks.flatMap((block) => {
    if (block.type === 'heading' || block.type === 'paragraph') return [block.passage];
    if (block.type === 'list') return block.items.flatMap((item) => passages(item.blocks));
    if (block.type === 'table') return block.rows.flat();
    return block.type === 'quote' ? passages(block.blocks) : [];
  });
}

/** Characters, and words without markup inside, whose place in the source holds something else, each with what stands there. */
export function misplaced(opened: Page): string[] {
  const wrong: string[] = [];
  for (const passage of [...passages(opened.blocks), ...opened.front.map((field) => field.passage)]) {
    for (const match of passage.text.matchAll(/[\p{L}\p{N}\p{Extended_Pictographic}½°]+/gu)) {
      const slice = passage.slice(match.index, match.index + match[0].length);
      const span = slice.span();
      const direct = passage.span(match.index, match.index + match[0].length);
      const there = opened.text.slice(span.start, span.end);
      if (direct.start !== span.start || direct.end !== span.end) wrong.push(`${match[0]}: two places`);
      if (there !== match[0] && !MARKUP.test(there)) wrong.push(`${match[0]}: ${JSON.stringify(there)}`);
    }
    let at = 0;
    for (const character of passage.text) {
      const span = passage.span(at, at + character.length);
      const there = opened.text.slice(span.start, span.end);
      if (!stands(character, there)) wrong.push(`${JSON.stringify(character)}: ${JSON.stringify(there)}`);
      at += character.length;
    }
  }
  return wrong;
}

const MARKUP = /[&\\*_`<[\]!]/;

/** Whether `there` may be how `character` was written: to the letter, escaped, by reference, or as a break. */
function stands(character: string, there: string): boolean {
  if (there === character || /^(&[#\w]+;|\\u[\da-f]{4})$/.test(there) || there === `\\${character}`)
    return true;
  if (character === '\uFFFD') return there === '\0';
  if (character === '"' || character === "'") return there === `${character}${character}`;
  return /\s/.test(character) && /^(\\?\s+|<br\s*\/?>)$/i.test(there);
}
