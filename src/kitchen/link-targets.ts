/** Follows a link of the manuscript to the page and heading that it names. */
import { fold } from '../larder/names.js';
import type { Block, Page } from '../manuscript/types.js';

export type LinkTarget =
  | { readonly kind: 'page'; readonly page: Page }
  /** It leads out of the manuscript, or to a file that is no text. */
  | { readonly kind: 'outside' }
  | { readonly kind: 'missing'; readonly misses: 'file' | 'heading'; readonly sure: boolean };

/** Where the link of a page leads among the pages. What only a website can tell is outside. */
export function linkedPage(pages: readonly Page[], from: Page, target: string): LinkTarget {
  if (SCHEME.test(target) || target.startsWith('//') || target === '' || target === '#') return OUTSIDE;
  const [address, anchor] = parted(target);
  const path = address.replace(/\?.*$/s, '');
  if (path === '') return anchored(from, anchor);
  const extension = EXTENSION.exec(path)?.[1]?.toLowerCase() ?? null;
  if (extension !== null && !PAGE_EXTENSIONS.has(extension)) return OUTSIDE;
  const wanted = resolved(path, from.path);
  // The front page of a site is no page of the book.
  if (wanted === null || stem(wanted) === '' || stem(wanted) === 'index') return OUTSIDE;
  const page = index(pages).get(stem(wanted));
  if (page !== undefined) return anchored(page, anchor);
  // One file read by itself knows nothing of its neighbours.
  if (pages.length === 1) return OUTSIDE;
  return { kind: 'missing', misses: 'file', sure: extension !== null && MARKDOWN.has(extension) };
}

const OUTSIDE: LinkTarget = { kind: 'outside' };
/** RFC 3986: a scheme is a letter, then letters, digits, "+", "-" or ".", then a colon. */
const SCHEME = /^[a-z][a-z\d+.-]*:/i;
const EXTENSION = /\.([a-z\d]{1,8})$/i;
const MARKDOWN: ReadonlySet<string> = new Set(['md', 'markdown']);
const PAGE_EXTENSIONS: ReadonlySet<string> = new Set([...MARKDOWN, 'html', 'htm']);

function parted(target: string): [path: string, anchor: string | null] {
  const hash = target.indexOf('#');
  const decoded = (part: string): string => {
    try {
      return decodeURIComponent(part);
    } catch {
      return part;
    }
  };
  return hash < 0
    ? [decoded(target), null]
    : [decoded(target.slice(0, hash)), decoded(target.slice(hash + 1))];
}

/** The path from the root of what was read; null where it climbs out of it. */
function resolved(path: string, from: string): string | null {
  const parts = path.startsWith('/') ? [] : from.split('/').slice(0, -1);
  for (const part of path.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return null;
  }
  return parts.join('/');
}

function stem(path: string): string {
  return path.replace(/\.(?:md|markdown|html?)$/i, '').replace(/\/index$/i, '');
}

const indexes = new WeakMap<readonly Page[], ReadonlyMap<string, Page>>();

function index(pages: readonly Page[]): ReadonlyMap<string, Page> {
  let known = indexes.get(pages);
  if (known === undefined) {
    known = new Map(pages.map((page) => [stem(page.path), page]));
    indexes.set(pages, known);
  }
  return known;
}

function anchored(page: Page, anchor: string | null): LinkTarget {
  if (anchor === null || anchor === '' || hasAnchor(page, anchor)) return { kind: 'page', page };
  return { kind: 'missing', misses: 'heading', sure: true };
}

/** Sites make the anchor of a heading from its words, each in its own way: letters and digits are what they share. */
function hasAnchor(page: Page, anchor: string): boolean {
  const wanted = letters(anchor).replace(/\d+$/, '');
  const isIt = (text: string): boolean => letters(text) === letters(anchor) || letters(text) === wanted;
  if (headings(page.blocks).some(isIt)) return true;
  // An anchor that the author set by hand: id="jam", name='jam', {#jam}.
  return [`"${anchor}"`, `'${anchor}'`, `{#${anchor}}`].some((mark) => page.text.includes(mark));
}

function headings(blocks: readonly Block[]): string[] {
  return blocks.flatMap((block) =>
    block.type === 'heading' ? [block.passage.text] : block.type === 'quote' ? headings(block.blocks) : [],
  );
}

function letters(text: string): string {
  return fold(text).replace(/[^\p{L}\p{N}]/gu, '');
}
