/** Knows where the lines of a text begin, and turns offsets into lines and columns. */

/** A place as reports give it: line and column from 1, offset from 0, all in UTF-16 units. */
export interface Place {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

const BYTE_ORDER_MARK = 0xfeff;

export class LineIndex {
  /** Offset of the first character of each line; a byte-order mark is before the first line, as editors show it. */
  private readonly starts: number[];

  constructor(private readonly text: string) {
    this.starts = [text.charCodeAt(0) === BYTE_ORDER_MARK ? 1 : 0];
    for (let at = 0; at < text.length; at++) {
      const code = text.charCodeAt(at);
      if (code === 10 || (code === 13 && text.charCodeAt(at + 1) !== 10)) this.starts.push(at + 1);
    }
  }

  /** How many lines the text has; a text that ends with a line end has an empty last one. */
  get count(): number {
    return this.starts.length;
  }

  /** The place of an offset; one beyond the text is taken as its end. */
  place(offset: number): Place {
    const at = Math.max(0, Math.min(offset, this.text.length));
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.starts[middle]! <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: Math.max(1, at - this.starts[low]! + 1), offset: at };
  }

  line(offset: number): number {
    return this.place(offset).line;
  }

  /** The offset at which a line (from 1) starts; the end of the text for a line beyond it. */
  start(line: number): number {
    return this.starts[line - 1] ?? this.text.length;
  }
}

/** The offset of the line end that follows `offset`; the end of the text on its last line. */
export function endOfLine(text: string, offset: number): number {
  const end = /[\r\n]/g;
  end.lastIndex = offset;
  return end.exec(text)?.index ?? text.length;
}
