/** The queries of the sheet: by chapter and recipe, each with its number, the passage, what is asked, and room for the answer. */
import type { Mark, Related } from '../../../rules/rule.js';
import { type Group, numberOf } from '../groups.js';
import type { Places } from '../places.js';
import { capitalized, curled } from '../words.js';
import { type Markup, markup } from './markup.js';
import { quotePassage, shortened } from './passage.js';

export interface SheetParts {
  readonly places: Places;
  readonly fingerprints: ReadonlyMap<Mark, string>;
  /** With the id under which each stands on the page. */
  readonly groups: readonly (Group & { readonly id: string })[];
}

export function chapters({ groups, ...parts }: SheetParts): Markup[] {
  const byFolder = new Map<string, SheetParts['groups'][number][]>();
  for (const group of groups) {
    const folder = group.file.split('/').slice(0, -1).join('/');
    const own = byFolder.get(folder);
    if (own === undefined) byFolder.set(folder, [group]);
    else own.push(group);
  }
  return [...byFolder].map(
    ([folder, own]) => markup`<section class="chapter" data-part>
<h2>${chapterName(folder, byFolder.size === 1)}</h2>
${own.map((group) => recipe(group, parts))}</section>
`,
  );
}

/** What a group is called: the recipe's title, or the file where there is none. */
export function nameOf({ title, file }: Group): string {
  return title === null || title === '' ? file : title;
}

function chapterName(folder: string, only: boolean): string {
  if (folder === '') return only ? 'The queries' : 'Outside the chapters';
  return folder
    .split('/')
    .map((name) => capitalized(name.replace(/[-_]+/g, ' ').trim()))
    .join(' / ');
}

type Parts = Omit<SheetParts, 'groups'>;

function recipe(group: SheetParts['groups'][number], parts: Parts): Markup {
  const { id, file, marks } = group;
  return markup`<div class="recipe" role="group" data-part data-file="${file}" aria-labelledby="${id}">
<h3 id="${id}"><bdi>${nameOf(group)}</bdi></h3>
${group.title === null || group.title === '' ? [] : [markup`<p class="file"><bdi>${file}</bdi></p>\n`]}${marks.map((mark, index) => query(mark, numberOf(index), group, parts))}</div>
`;
}

function query(mark: Mark, number: string, group: SheetParts['groups'][number], parts: Parts): Markup {
  const { places, fingerprints } = parts;
  const id = `${group.id}-${number.toLowerCase()}`;
  const { line } = places.place(mark.file, mark.span.start);
  return markup`<article class="${mark.weight}" data-weight="${mark.weight}" data-rule="${mark.rule}" aria-labelledby="${id}">
<h4 id="${id}"><span class="number">${number}</span> <span class="weight">${mark.weight}</span> <span class="line">line ${line}</span></h4>
<div class="asked">
<blockquote>${quoted(mark, places)}</blockquote>
<p class="message">${curled(mark.message)}</p>
${mark.related.map((related) => comparison(mark, related, places))}<p class="advice">${curled(mark.advice)}</p>
${mark.mends.map(({ label }) => markup`<p class="mend">Offered: ${curled(capitalized(label))}</p>\n`)}<p class="rule"><a href="#rule-${mark.rule}">${mark.rule}</a></p>
<label for="${id}-answer">Answer <span class="quiet">to ${number}, ${nameOf(group)}</span></label>
<div class="answer"><textarea id="${id}-answer" rows="3" dir="auto" spellcheck="true" data-fingerprint="${fingerprints.get(mark)!}"></textarea><div class="written" aria-hidden="true"></div></div>
</div>
</article>
`;
}

function quoted(mark: Mark, places: Places): Markup {
  const { before, words, after } = quotePassage(places.page(mark.file).text, mark.span);
  const marked =
    words === ''
      ? markup`<mark class="caret"><span class="quiet">here</span></mark>`
      : markup`<mark>${words}</mark>`;
  return markup`<bdi>${before}${marked}${after}</bdi>`;
}

/** The other side of the disagreement, with its place and its words. */
function comparison(mark: Mark, { file, span, message }: Related, places: Places): Markup {
  const { line } = places.place(file, span.start);
  const place = file === mark.file ? `line ${line}` : `${file}, line ${line}`;
  const words = shortened(places.words(file, span));
  // Some say no more of the place than its words.
  if (message === words) return markup`<p class="compare">Compare ${place}: <q><bdi>${words}</bdi></q></p>\n`;
  const quote = words === '' ? [] : [markup` <q><bdi>${words}</bdi></q>`];
  return markup`<p class="compare">Compare ${place}: ${curled(message)}${quote}</p>\n`;
}
