/** Reads the YAML front matter: every scalar with its key and its exact place. Of a broken one only the plain lines are read. */
import { createRequire } from 'node:module';
import type { Scalar } from 'yaml';
import { Assembler } from './assemble.js';
import { Passage } from './passage.js';
import type { FrontField } from './types.js';

/** The fields between the fences; `start` is where the first fence begins, `end` where the last one ends. */
export function readFront(source: string, start: number, end: number): FrontField[] {
  const open = lineAfter(source, start);
  const close = Math.max(source.lastIndexOf('\n', end - 1), source.lastIndexOf('\r', end - 1)) + 1;
  if (open >= close) return [];
  return simpleFields(source, open, close) ?? yamlFields(source, open, close);
}

// Most front matter is read without it, and loading it takes longer than reading a page.
let loaded: typeof import('yaml') | null = null;

function yaml(): typeof import('yaml') {
  loaded ??= createRequire(import.meta.url)('yaml') as typeof import('yaml');
  return loaded;
}

/** All lines "key: value", "key: [a, b]" or blank, with values that read the same in YAML and on the page; null when any is not. */
function simpleFields(source: string, open: number, close: number): FrontField[] | null {
  const fields: FrontField[] = [];
  const keys = new Set<string>();
  for (let at = open; at < close; ) {
    const next = Math.min(lineAfter(source, at), close);
    const line = source.slice(at, next).trimEnd();
    if (line !== '') {
      const match = SIMPLE.exec(line);
      if (match === null || keys.has(match[1]!)) return null;
      const key = match[1]!;
      keys.add(key);
      const value = at + match[0].length;
      const list = LIST.exec(line.slice(match[0].length));
      if (list === null) return null;
      if (list[1] !== undefined) {
        let item = value + 1;
        for (const part of list[1].split(',')) {
          const field = simpleScalar(source, item, item + part.length);
          if (field === null) return null;
          fields.push({ key, passage: field });
          item += part.length + 1;
        }
      } else {
        const field = simpleScalar(source, value, at + line.length);
        if (field === null) return null;
        fields.push({ key, passage: field });
      }
    }
    at = next;
  }
  return fields;
}

/** What can be read of broken YAML: "title: Soup: the best" is none, and yet it is clear what it says. */
function plainLines(source: string, open: number, close: number): FrontField[] {
  const fields: FrontField[] = [];
  for (let at = open; at < close; at = lineAfter(source, at)) {
    const line = source.slice(at, Math.min(lineAfter(source, at), close)).trimEnd();
    const match = SIMPLE.exec(line);
    if (match === null) continue;
    const start = at + match[0].length;
    const end = at + line.length;
    const passage = /^[\p{L}\p{N}]/u.test(line.slice(match[0].length))
      ? Passage.verbatim(source, start, end)
      : simpleScalar(source, start, end);
    if (passage !== null) fields.push({ key: match[1]!, passage });
  }
  return fields;
}

const SIMPLE = /^([A-Za-z][\w -]*):(?: +|$)/;
const LIST = /^(?:\[([^[\]{}]*)\]|[^[\]{}]*)$/;

/** A plain scalar of letters and harmless marks, or a quoted one without escapes. */
function simpleScalar(source: string, from: number, to: number): Passage | null {
  let start = from;
  let end = to;
  while (start < end && source[start] === ' ') start++;
  while (end > start && source[end - 1] === ' ') end--;
  const text = source.slice(start, end);
  if (text === '') return Passage.verbatim(source, start, start);
  if (PLAIN.test(text)) return Passage.verbatim(source, start, end);
  return QUOTED.test(text) ? Passage.verbatim(source, start + 1, end - 1) : null;
}

const PLAIN = /^[\p{L}\p{N}][^:#,"'\\]*$/u;
const QUOTED = /^(?:"[^"\\]*"|'[^']*')$/;

function yamlFields(source: string, open: number, close: number): FrontField[] {
  const fields: FrontField[] = [];
  try {
    const document = yaml().parseDocument(source.slice(open, close), {
      logLevel: 'silent',
      strict: false,
      uniqueKeys: false,
    });
    if (document.errors.length > 0) return plainLines(source, open, close);
    collect(document.contents, '', fields, source, open, 0);
  } catch {
    // A reader that gives up on strange YAML leaves the page without fields, as if it had none.
    return [];
  }
  return fields;
}

const DEEPEST = 20;

function collect(
  node: unknown,
  key: string,
  into: FrontField[],
  source: string,
  open: number,
  depth: number,
): void {
  if (depth > DEEPEST) return;
  const { isMap, isScalar, isSeq } = yaml();
  if (isMap(node)) {
    for (const pair of node.items) {
      const name = isScalar(pair.key) ? String(pair.key.value) : '';
      collect(pair.value, key === '' ? name : `${key}.${name}`, into, source, open, depth + 1);
    }
  } else if (isSeq(node)) {
    for (const item of node.items) collect(item, key, into, source, open, depth + 1);
  } else if (isScalar(node) && node.range) {
    into.push({ key, passage: scalarPassage(node, source, open + node.range[0], open + node.range[1]) });
  }
}

/** Only the characters between the quotes; escapes and folded lines are matched with what they read as. */
function scalarPassage(node: Scalar, source: string, from: number, to: number): Passage {
  const { Scalar } = yaml();
  const double = node.type === Scalar.QUOTE_DOUBLE;
  const quoted = double || node.type === Scalar.QUOTE_SINGLE;
  const start = quoted ? from + 1 : from;
  const end = quoted ? to - 1 : to;
  const value = typeof node.value === 'string' ? node.value : source.slice(start, end);
  if (source.slice(start, end) === value) return Passage.verbatim(source, start, end);
  const into = new Assembler(source);
  let at =
    node.type === Scalar.BLOCK_FOLDED || node.type === Scalar.BLOCK_LITERAL
      ? lineAfter(source, start)
      : start;
  for (let index = 0; index < value.length; ) {
    const read = value[index]!;
    const written = source[at];
    if (/\s/.test(read)) {
      // White space may be a fold: any white space of the source, line ends and indentation included, stands for it.
      let reads = index;
      while (reads < value.length && /\s/.test(value[reads]!)) reads++;
      let stands = at;
      while (
        stands < end &&
        (/\s/.test(source[stands]!) || (double && /^\\[\sntr]/.test(source.slice(stands, stands + 2))))
      ) {
        stands += source[stands] === '\\' ? 2 : 1;
      }
      if (stands === at) break;
      into.instead(reads - index > 2 ? ' ' : value.slice(index, reads), at, stands);
      index = reads;
      at = stands;
      continue;
    }
    while (at < end && written !== read && /\s/.test(source[at]!)) at++;
    if (source[at] === read && at < end && !(read === "'" && source.startsWith("''", at) && quoted)) {
      into.verbatim(at, at + 1);
      at++;
      index++;
      continue;
    }
    if (!quoted) break;
    ESCAPE.lastIndex = at;
    const escaped = ESCAPE.exec(source);
    if (escaped === null) break;
    const reads = String.fromCodePoint(value.codePointAt(index) ?? 0);
    into.instead(reads, at, at + escaped[0].length);
    at += escaped[0].length;
    index += reads.length;
  }
  return into.empty ? Passage.verbatim(source, start, end) : into.passage(start);
}

const ESCAPE = /''|\\x[\da-fA-F]{2}|\\u[\da-fA-F]{4}|\\U[\da-fA-F]{8}|\\[^\s]/y;

function lineAfter(source: string, from: number): number {
  for (let at = from; at < source.length; at++) {
    if (source[at] === '\n') return at + 1;
    if (source[at] === '\r') return source[at + 1] === '\n' ? at + 2 : at + 1;
  }
  return source.length;
}
