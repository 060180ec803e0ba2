/** A stretch of plain text taken out of Markdown, whose every character knows where it stands in the source. */
import type { Span } from './types.js';

/**
 * A run of characters of the passage that stand side by side in the source.
 * Where the run is not written as it reads (an entity, an escape), `end - start` differs from its length in the passage,
 * and all its characters share one place.
 */
export interface Run {
  /** Offset in the passage's text at which the run begins. */
  readonly at: number;
  /** Offsets in the source, end exclusive. */
  readonly start: number;
  readonly end: number;
}

export class Passage {
  /** `runs` are sorted by `at`, the first at 0, and cover the text; a passage without text has none. */
  constructor(
    readonly text: string,
    private readonly runs: readonly Run[],
    private readonly anchor: number = runs[0]?.start ?? 0,
  ) {}

  /** A passage that is a part of the source to the letter. */
  static verbatim(source: string, start: number, end: number): Passage {
    return new Passage(source.slice(start, end), start < end ? [{ at: 0, start, end }] : [], start);
  }

  /** `parts` one after the other with `joint` between them, which stands for all that the source has there. */
  static join(parts: readonly Passage[], joint: string): Passage {
    if (parts.length === 1) return parts[0]!;
    const runs: Run[] = [];
    let text = '';
    for (const part of parts) {
      if (part.text === '') continue;
      if (text !== '') {
        runs.push({ at: text.length, start: runs[runs.length - 1]!.end, end: part.span().start });
        text += joint;
      }
      for (const run of part.runs) runs.push({ at: run.at + text.length, start: run.start, end: run.end });
      text += part.text;
    }
    return new Passage(text, runs, runs[0]?.start ?? parts[0]?.anchor ?? 0);
  }

  /** The place in the source of the stretch `from` to `to` (end exclusive) of this passage's text. */
  span(from = 0, to = this.text.length): Span {
    if (this.runs.length === 0) return { start: this.anchor, end: this.anchor };
    const start = this.sourceStart(Math.min(from, this.text.length));
    return { start, end: to > from ? this.sourceEnd(to) : start };
  }

  /** The part `from` to `to` of this passage, with its places. */
  slice(from: number, to: number = this.text.length): Passage {
    const start = Math.max(0, from);
    const end = Math.max(start, Math.min(to, this.text.length));
    const parts: Run[] = [];
    for (let index = this.runAt(start); index < this.runs.length && end > start; index++) {
      const run = this.runs[index]!;
      if (run.at >= end) break;
      const runEnd = this.runs[index + 1]?.at ?? this.text.length;
      const cutStart = Math.max(run.at, start);
      const cutEnd = Math.min(runEnd, end);
      const whole = this.isWhole(index);
      parts.push({
        at: cutStart - start,
        start: whole ? run.start : run.start + (cutStart - run.at),
        end: whole ? run.end : run.start + (cutEnd - run.at),
      });
    }
    return new Passage(this.text.slice(start, end), parts, parts[0]?.start ?? this.span(start, start).start);
  }

  /** This passage without white space at its ends. */
  trim(): Passage {
    const start = this.text.length - this.text.trimStart().length;
    if (start === 0 && this.text.trimEnd().length === this.text.length) return this;
    return this.slice(start, Math.max(start, this.text.trimEnd().length));
  }

  private sourceStart(at: number): number {
    const index = this.runAt(at);
    const run = this.runs[index]!;
    const into = at - run.at;
    if (into === 0) return run.start;
    if (index === this.runs.length - 1 && at >= this.text.length) return run.end;
    return this.isWhole(index) ? run.start : run.start + into;
  }

  private sourceEnd(to: number): number {
    const index = this.runAt(to - 1);
    const run = this.runs[index]!;
    return this.isWhole(index) ? run.end : run.start + (to - run.at);
  }

  /** Whether the run is written otherwise than it reads, so that all its characters share one place. */
  private isWhole(index: number): boolean {
    const run = this.runs[index]!;
    return run.end - run.start !== (this.runs[index + 1]?.at ?? this.text.length) - run.at;
  }

  /** The run that holds the character at `at`. */
  private runAt(at: number): number {
    let low = 0;
    let high = this.runs.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.runs[middle]!.at <= at) low = middle;
      else high = middle - 1;
    }
    return Math.max(0, low);
  }
}
