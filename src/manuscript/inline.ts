/** Flattens the inline content of a block (emphasis, links, code, breaks) into one passage. */
import type { Definition, Link, LinkReference, Paragraph as MdastParagraph, PhrasingContent } from 'mdast';
import { align } from './align.js';
import { Assembler } from './assemble.js';
import type { Passage } from './passage.js';

/** Where the block stands, and who wants to hear of HTML in it. */
export interface Surroundings {
  readonly source: string;
  /** What to add to the parser's offsets: 1 after a byte-order mark, which the parser does not count. */
  readonly shift: number;
  readonly quotes: number;
  readonly onHtml: (start: number, end: number) => void;
  /** Told of every link, and of every definition that links may name. */
  readonly onLink: (node: Link | LinkReference | Definition, start: number, end: number) => void;
}

/** The text of `nodes`; images and HTML leave nothing, breaks leave "\n". */
export function flatten(nodes: readonly PhrasingContent[], anchor: number, around: Surroundings): Passage {
  const into = new Assembler(around.source);
  // A stack of its own instead of recursion: a hostile line nests as deeply as it is long.
  const waiting: PhrasingContent[] = [];
  for (let index = nodes.length - 1; index >= 0; index--) waiting.push(nodes[index]!);
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    const start = (node.position?.start.offset ?? 0) + around.shift;
    const end = (node.position?.end.offset ?? 0) + around.shift;
    switch (node.type) {
      case 'text':
      case 'inlineCode':
        align(
          {
            source: around.source,
            start,
            end,
            value: node.value,
            quotes: around.quotes,
            code: node.type === 'inlineCode',
          },
          into,
        );
        break;
      case 'break':
        into.instead('\n', start, breakEnd(around.source, start));
        break;
      case 'html':
        around.onHtml(start, end);
        if (/^<br\s*\/?>$/i.test(node.value)) into.instead('\n', start, end);
        break;
      case 'link':
      case 'linkReference':
        around.onLink(node, start, end);
        for (let index = node.children.length - 1; index >= 0; index--) waiting.push(node.children[index]!);
        break;
      case 'emphasis':
      case 'strong':
      case 'delete':
        for (let index = node.children.length - 1; index >= 0; index--) waiting.push(node.children[index]!);
        break;
    }
  }
  return into.passage(anchor);
}

/** Where a hard break ends: after its line end. The parser may count the marks of the next line in. */
function breakEnd(source: string, start: number): number {
  let at = start;
  while (source[at] === ' ' || source[at] === '\t' || source[at] === '\\') at++;
  return at + (source.startsWith('\r\n', at) ? 2 : 1);
}

/** Whether the whole paragraph stands in one emphasis; a colon or full stop after it does not count. */
export function wrapping(paragraph: MdastParagraph): 'strong' | 'emphasis' | null {
  const children = paragraph.children;
  const first = children[0];
  if (first === undefined || (first.type !== 'strong' && first.type !== 'emphasis')) return null;
  for (let index = 1; index < children.length; index++) {
    const child = children[index]!;
    if (child.type === 'html') continue;
    if (child.type !== 'text' || !/^[\s:.]*$/.test(child.value)) return null;
  }
  // "***both***" is emphasis with strong inside, and as good as strong.
  const inner = first.children.length === 1 ? first.children[0] : undefined;
  return inner?.type === 'strong' ? 'strong' : first.type;
}
