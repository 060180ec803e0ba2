/** Follows a link of the manuscript to the file and heading that it names. */
import { fold } from '../larder/names.js';
import type { Block, Page } from '../manuscript/types.js';

/** The files of a manuscript by their names: all that has to be known to tell whether a link stays within it. */
export class Paths {
  private readonly byStem: ReadonlyMap<string, string>;

  constructor(private readonly paths: readonly string[]) {
    this.byStem = new Map(paths.map((path) => [stem(path), path]));
  }

  /**
   * The file that a link on the page `from` leads to, with the heading that it names in it; no path where the manuscript has
   * no such file, null where it leads out. What only a website can tell is outside.
   */
  follow(from: string, target: string): FollowedLink | null {
    if (SCHEME.test(target) || target.startsWith('//') || target === '' || target === '#') return null;
    const [address, anchor] = parted(target);
    const path = address.replace(/\?.*$/s, '');
    if (path === '') return { path: from, anchor };
    const extension = EXTENSION.exec(path)?.[1]?.toLowerCase() ?? null;
    if (extension !== null && !PAGE_EXTENSIONS.has(extension)) return null;
    const wanted = resolved(path, from);
    // The front page of a site is no page of the book.
    if (wanted === null || stem(wanted) === '' || stem(wanted) === 'index') return null;
    const known = this.byStem.get(stem(wanted));
    if (known !== undefined) return { path: known, anchor };
    // One file read by itself knows nothing of its neighbours.
    if (this.paths.length === 1) return null;
    return { path: null, sure: extension !== null && MARKDOWN.has(extension) };
  }
}

export type FollowedLink =
  | { readonly path: string; readonly anchor: string | null }
  /** `sure`: it can be nothing but a file of the manuscript. */
  | { readonly path: null; readonly sure: boolean };

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

/** Whether the page has the heading. Sites make the anchor of a heading from its words, each in its own way: letters and digits are what they share. */
export function hasAnchor(page: Page, anchor: string): boolean {
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
