/** Puts a passage together from pieces of the source, some to the letter and some written otherwise than they read. */
import { Passage, type Run } from './passage.js';

export class Assembler {
  private text = '';
  private readonly runs: { at: number; start: number; end: number }[] = [];
  /** Where the last run ends in the source if it stands there to the letter, so that the next may continue it. */
  private open = -1;

  constructor(private readonly source: string) {}

  get empty(): boolean {
    return this.text === '';
  }

  /** Adds `start` to `end` of the source as it stands. */
  verbatim(start: number, end: number): void {
    if (start >= end) return;
    if (start === this.open) this.runs[this.runs.length - 1]!.end = end;
    else this.runs.push({ at: this.text.length, start, end });
    this.text += this.source.slice(start, end);
    this.open = end;
  }

  /** Adds `text`, for which `start` to `end` stands in the source: "½" for "&frac12;". */
  instead(text: string, start: number, end: number): void {
    if (text === '') return;
    this.runs.push({ at: this.text.length, start, end });
    this.text += text;
    this.open = -1;
  }

  /** The passage; `anchor` is its place where it has no text. */
  passage(anchor: number): Passage {
    const runs: readonly Run[] = this.runs;
    return new Passage(this.text, runs, runs[0]?.start ?? anchor);
  }
}
