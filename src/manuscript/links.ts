/** Gathers the links of a page, and looks up those whose target is defined elsewhere on it. */
import type { Definition, Link, LinkReference } from 'mdast';
import type { PageLink, Span } from './types.js';

export class LinkFinder {
  private readonly links: { readonly span: Span; readonly target: string | null; readonly label: string }[] =
    [];
  private readonly defined = new Map<string, string>();

  look(node: Link | LinkReference | Definition, start: number, end: number): void {
    if (node.type === 'definition') {
      // The first of two definitions holds.
      if (!this.defined.has(node.identifier)) this.defined.set(node.identifier, node.url);
    } else if (node.type === 'link') this.links.push({ span: { start, end }, target: node.url, label: '' });
    else this.links.push({ span: { start, end }, target: null, label: node.identifier });
  }

  /** In the order of the page. */
  found(): PageLink[] {
    return this.links.flatMap(({ span, target, label }) => {
      const leads = target ?? this.defined.get(label);
      return leads === undefined ? [] : [{ span, target: leads }];
    });
  }
}
