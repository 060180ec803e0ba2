/** What a file of the manuscript is once it has been read: blocks of text whose every character knows its place in the source. */
import type { LineIndex } from './lines.js';
import type { Passage } from './passage.js';

/** A stretch of a file: UTF-16 offsets from 0 into the text as decoded (a byte-order mark counts as one), end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A file's text in memory. `path` is relative to the root that was read, with forward slashes. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

export interface Heading {
  readonly type: 'heading';
  /** 1 to 6. */
  readonly depth: number;
  readonly passage: Passage;
  readonly span: Span;
}

export interface Paragraph {
  readonly type: 'paragraph';
  /** Soft and hard breaks both stand as "\n" in the passage's text. */
  readonly passage: Passage;
  /** Set when the whole paragraph is wrapped in one emphasis: "**For the sauce**". */
  readonly wrapped: 'strong' | 'emphasis' | null;
  readonly span: Span;
}

export interface ListItem {
  /** The number printed before it in an ordered list (as it counts, where all are printed alike: "1."); else null. */
  readonly number: number | null;
  readonly blocks: readonly Block[];
  readonly span: Span;
}

export interface List {
  readonly type: 'list';
  readonly ordered: boolean;
  readonly items: readonly ListItem[];
  readonly span: Span;
}

export interface Table {
  readonly type: 'table';
  /** The rows, the header first; a cell without text is an empty passage. */
  readonly rows: readonly (readonly Passage[])[];
  readonly span: Span;
}

export interface Quote {
  readonly type: 'quote';
  readonly blocks: readonly Block[];
  readonly span: Span;
}

/** A thematic break, code or HTML: nothing to read in it, but it parts what stands around it. */
export interface Other {
  readonly type: 'break' | 'code' | 'html';
  readonly span: Span;
}

export type Block = Heading | Paragraph | List | Table | Quote | Other;

/** One scalar of the YAML front matter: its key (dotted for nested maps), its value as text and where that stands. */
export interface FrontField {
  readonly key: string;
  readonly passage: Passage;
}

/** An author's `<!-- stet rule: reason -->`; rules is empty where the comment names none. */
export interface Stet {
  readonly rules: readonly string[];
  readonly reason: string;
  readonly span: Span;
  /** What it silences: the marks of a line, of the recipe that it stands in or right above, or of the file. */
  readonly scope: 'line' | 'recipe' | 'file';
  /** The line (from 1) that it speaks of: its own when text stands before it there, otherwise the next line with text. */
  readonly line: number;
}

/** A link in the text, with where it leads as it is written: an address, a path, "#a-heading". */
export interface PageLink {
  readonly target: string;
  /** All of it, brackets and target included. */
  readonly span: Span;
}

export interface Page {
  readonly path: string;
  readonly text: string;
  readonly lines: LineIndex;
  readonly front: readonly FrontField[];
  readonly blocks: readonly Block[];
  readonly stets: readonly Stet[];
  readonly links: readonly PageLink[];
}
