/** Turns offsets into the protocol's positions and back: lines from 0, characters from 0 in UTF-16 or UTF-8 units. The only file that does. */
import type { Position, Range } from 'vscode-languageserver';
import { endOfLine, LineIndex } from '../manuscript/lines.js';
import type { Span } from '../manuscript/types.js';

export type Encoding = 'utf-16' | 'utf-8';

export class Places {
  private readonly lines: LineIndex;

  constructor(
    private readonly text: string,
    private readonly encoding: Encoding,
    lines?: LineIndex,
  ) {
    this.lines = lines ?? new LineIndex(text);
  }

  position(offset: number): Position {
    const { line, column, offset: at } = this.lines.place(offset);
    if (this.encoding === 'utf-16') return { line: line - 1, character: column - 1 };
    return { line: line - 1, character: bytes(this.text.slice(at - column + 1, at)) };
  }

  range({ start, end }: Span): Range {
    return { start: this.position(start), end: this.position(end) };
  }

  /** A position beyond its line is the line's end, and one beyond the text the text's. */
  offset({ line, character }: Position): number {
    if (line >= this.lines.count) return this.text.length;
    const start = this.lines.start(line + 1);
    const end = endOfLine(this.text, start);
    if (this.encoding === 'utf-16') return Math.min(start + character, end);
    let at = start;
    let left = character;
    while (at < end && left > 0) {
      const one = String.fromCodePoint(this.text.codePointAt(at)!);
      left -= bytes(one);
      at += one.length;
    }
    return Math.min(at, end);
  }

  span({ start, end }: Range): Span {
    return { start: this.offset(start), end: this.offset(end) };
  }
}

function bytes(text: string): number {
  return Buffer.byteLength(text, 'utf8');
}
