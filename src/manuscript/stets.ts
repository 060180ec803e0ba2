/** Finds the author's stets in HTML comments: the words "let it stand", for which rules, why, and for which line. */
import { endOfLine, type LineIndex } from './lines.js';
import type { Stet } from './types.js';

/** Finds the stets of one file, in the order in which the parser meets its HTML. */
export class StetFinder {
  readonly found: Stet[] = [];
  /** For a line, the next one with text, as far as it has been looked for: comments may stand in heaps. */
  private readonly next = new Map<number, number>();

  constructor(
    private readonly source: string,
    private readonly lines: LineIndex,
  ) {}

  /** Looks at the HTML between `start` and `end` of the source. */
  look(start: number, end: number): void {
    const { source } = this;
    for (let at = source.indexOf(OPEN, start); at >= 0 && at < end; ) {
      const close = source.indexOf(CLOSE, at + OPEN.length);
      if (close < 0 || close >= end) return;
      const after = close + CLOSE.length;
      const said = readStet(source.slice(at + OPEN.length, close));
      if (said !== null)
        this.found.push({ ...said, span: { start: at, end: after }, line: this.silenced(at, after) });
      at = source.indexOf(OPEN, after);
    }
  }

  /** Its own line when text stands on it, else the next line that has some. */
  private silenced(start: number, end: number): number {
    const { source, lines } = this;
    const first = lines.line(start);
    const last = lines.line(end - 1);
    if (hasText(source.slice(lines.start(first), Math.min(start, lines.start(first) + FURTHEST_LOOK))))
      return first;
    if (hasText(source.slice(end, Math.min(lines.start(last + 1), end + FURTHEST_LOOK)))) return last;
    return this.textAfter(last);
  }

  private textAfter(last: number): number {
    const { source, lines, next } = this;
    const passed: number[] = [];
    let found = last;
    let open = false;
    for (let line = last + 1; line <= lines.count; line++) {
      const known = open ? undefined : next.get(line);
      if (known !== undefined) {
        found = known;
        break;
      }
      if (!open) passed.push(line);
      let text = source.slice(lines.start(line), lines.start(line + 1));
      if (open) {
        const close = text.indexOf(CLOSE);
        if (close < 0) continue;
        text = text.slice(close + CLOSE.length);
      }
      // What is left after a comment that goes on to the next line is not text.
      open = text.lastIndexOf(OPEN) > text.lastIndexOf(CLOSE);
      if (hasText(open ? text.slice(0, text.lastIndexOf(OPEN)) : text)) {
        found = line;
        break;
      }
    }
    for (const line of passed) next.set(line, found);
    return found;
  }
}

/** How far along a line text is looked for; a line that has none by then is no author's. */
const FURTHEST_LOOK = 2000;

/** Whether nothing but comments and white space stands between `start` and `end`. */
export function onlyComments(source: string, start: number, end: number): boolean {
  return withoutComments(source.slice(start, end)).trim() === '';
}

const OPEN = '<!--';
const CLOSE = '-->';

/** "stet rule, rule: reason", "stet recipe rule: reason", "stet file: reason". */
function readStet(comment: string): Pick<Stet, 'rules' | 'reason' | 'scope'> | null {
  const said = comment.trim();
  if (!/^stet(?![\p{L}\p{N}-])/iu.test(said)) return null;
  const rest = said.slice('stet'.length).trim();
  const wide = /^(recipe|file)(?![\p{L}\p{N}-])/iu.exec(rest);
  if (wide !== null) {
    const named = readNames(rest.slice(wide[0].length).trim());
    const isReason = named.rules.length === 0 && named.reason !== '' && !rest.includes(':');
    if (!isReason) return { ...named, scope: wide[0].toLowerCase() as Stet['scope'] };
  }
  return { ...readNames(rest), scope: 'line' };
}

/** Without a colon, what follows is rules if it looks like their names, else the reason. */
function readNames(rest: string): { rules: string[]; reason: string } {
  const colon = rest.indexOf(':');
  const names = (colon < 0 ? rest : rest.slice(0, colon)).split(/[\s,]+/).filter((name) => name !== '');
  const named =
    names.every((name) => RULE.test(name)) && (colon >= 0 || names.length < 2 || rest.includes(','));
  if (!named) return { rules: [], reason: oneLine(rest) };
  return {
    rules: names.map((name) => name.toLowerCase()),
    reason: colon < 0 ? '' : oneLine(rest.slice(colon + 1)),
  };
}

const RULE = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/i;

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** Whether anything but bullets, numbers, marks of Markdown and comments stands there. */
function hasText(line: string): boolean {
  return /[\p{L}\p{N}\p{S}]/u.test(withoutComments(line).replace(/^[\s>*+-]*(\d+[.)]\s)?[\s|]*/, ''));
}

function withoutComments(text: string): string {
  if (!text.includes(OPEN)) return text;
  let left = '';
  let at = 0;
  for (let open = text.indexOf(OPEN); open >= 0; open = text.indexOf(OPEN, at)) {
    const close = text.indexOf(CLOSE, open + OPEN.length);
    if (close < 0) break;
    left += text.slice(at, open);
    at = close + CLOSE.length;
  }
  return left + text.slice(at);
}

/** Where the rule's name begins that is being typed at `offset` in a stet which need not be closed yet; null elsewhere. */
export function ruleBeingTyped(source: string, offset: number): number | null {
  const before = source.slice(Math.max(0, offset - FURTHEST_LOOK), offset);
  const open = before.lastIndexOf(OPEN);
  if (open < 0 || before.includes(CLOSE, open)) return null;
  const said = before.slice(open + OPEN.length);
  const name = /^\s*stet\s(?:[\s,a-z0-9-]*[\s,])?([a-z0-9-]*)$/i.exec(said);
  return name === null ? null : offset - name[1]!.length;
}

/** A comment that lets a rule's mark stand, to be written behind the text of the mark's line. */
export function stetComment(rule: string, reason: string): string {
  return `${OPEN} stet ${rule}: ${reason} ${CLOSE}`;
}

/**
 * Where such a comment goes: behind the text of the line that begins at `start`, before the spaces or the backslash that
 * break the line. On a line of its own it would part a list in two.
 */
export function placeForStet(source: string, start: number): number {
  const line = source.slice(start, endOfLine(source, start)).trimEnd();
  return start + (line.endsWith('\\') ? line.slice(0, -1).trimEnd() : line).length;
}
