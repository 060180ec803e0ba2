/** Puts a recipe together from the sections that make it up: each block goes to the part that it belongs to. */
import type { HeadingKind } from '../larder/headings.js';
import type { Passage } from '../manuscript/passage.js';
import type { Page, Span } from '../manuscript/types.js';
import { CLEAR, NONE, POSSIBLE, SAID } from './evidence.js';
import {
  countAlone,
  type Fields,
  frontFields,
  readFields,
  tableFields,
  timeValue,
  yieldRemark,
  yieldSentence,
  yieldValue,
} from './fields.js';
import type { Head } from './heads.js';
import { instructs, type LineJudge, opensLikeOrder, startsWithAmount, wordCount } from './language.js';
import { ListBuilder } from './lists.js';
import { MethodBuilder } from './method.js';
import type { Outline } from './outline.js';
import type { Content, Piece, Section } from './sections.js';
import { isTitle, isTools, labelledKind, opensAsStep, partedAtFields, remarkKind, textsOf } from './texts.js';
import type { Recipe, StatedTime, StatedYield } from './types.js';

export interface Naming {
  readonly title: Passage | null;
  /** Whether the page's front matter speaks of this recipe, which it does where there is only one. */
  readonly front: boolean;
}

/** What stands under one head: listings, steps, and whether its listings come after the first steps of the recipe. */
interface Group {
  readonly listed: boolean;
  readonly stepped: boolean;
  readonly late: boolean;
}

const NEW_GROUP: Group = { listed: false, stepped: false, late: false };

export function recipeOf(page: Page, outline: Outline, naming: Naming, judge: LineJudge): Recipe {
  return new RecipeBuilder(page, outline, naming, judge).build();
}

class RecipeBuilder {
  private readonly list: ListBuilder;
  private readonly method: MethodBuilder;
  private readonly headnote: Passage[] = [];
  private readonly notes: Passage[] = [];
  private readonly storage: Passage[] = [];
  private readonly nutrition: Passage[] = [];
  private readonly equipment: Passage[] = [];
  private readonly rest: Passage[] = [];
  private readonly yields: StatedYield[] = [];
  private readonly times: StatedTime[] = [];
  private title: Passage | null;
  private listed = false;
  /** Whether the page tells some listings, then what to do with them, then more listings. */
  private inTurns = false;
  private readonly groups = new Map<Head | null, Group>();
  /** Whether a list of its own was read in the section at hand. */
  private listedHere = false;
  /** How sure the surest list and method of the recipe are: less sure blocks are then neither. */
  private readonly surestList: number;
  private readonly surestMethod: number;
  /** Whether all that reads as a method stands before the list. */
  private readonly stepsFirst: boolean;

  constructor(
    private readonly page: Page,
    private readonly outline: Outline,
    private readonly naming: Naming,
    judge: LineJudge,
  ) {
    this.list = new ListBuilder(judge);
    this.method = new MethodBuilder(page.text);
    this.title = naming.title;
    this.readTitle();
    let list = NONE as number;
    let method = NONE as number;
    let listed = false;
    let after = false;
    for (const { pieces } of outline.sections) {
      for (const { reads } of pieces) {
        listed ||= reads.list >= CLEAR;
        after ||= listed && reads.method > NONE;
        list = Math.max(list, reads.list);
        method = Math.max(method, reads.method);
      }
    }
    this.surestList = list;
    this.surestMethod = method;
    this.stepsFirst = listed && !after;
  }

  /** "Jam (makes 4 jars)": the yield is no part of the name. */
  private readTitle(): void {
    const title = this.title;
    const open = title?.text.lastIndexOf('(') ?? -1;
    if (title === null || open < 1 || !title.text.trimEnd().endsWith(')')) return;
    const fields = readFields(title.slice(open + 1, title.text.lastIndexOf(')')).trim());
    if (fields === null) return;
    this.take(fields);
    this.title = title.slice(0, open).trim();
  }

  build(): Recipe {
    let group: Head | null = null;
    for (const section of this.outline.sections) {
      const head = section.head === this.outline.head ? null : section.head;
      group = this.groupFor(section, head, group);
      if (head !== null) this.readHead(head);
      this.list.enter(group);
      this.method.enter(group);
      this.listedHere = false;
      const part = isPart(section, head);
      const varied = !part && this.isVariation(section, head);
      for (const [index, piece] of section.pieces.entries()) {
        if (varied) append(this.notes, textsOf(piece.block));
        else if (this.leads(piece, section.pieces[index + 1], section.scope))
          this.readLead(piece.block, group);
        else this.readPiece(piece, section, head, group, part);
      }
    }
    const front: Fields = this.naming.front ? frontFields(this.page.front) : { yields: [], times: [] };
    const yields = [...this.yields, ...front.yields];
    const steps = this.method.steps(this.apart());
    const notes = inOrder([...this.notes, ...this.method.remarks]);
    // A yield may be said at the very end.
    if (!yields.some((stated) => stated.parsed !== null))
      yields.push(...notes.flatMap((note) => yieldSentence(note) ?? []));
    return {
      file: this.page.path,
      title: this.title,
      span: this.span(),
      headnote: this.headnote,
      yield: yields.find((stated) => stated.parsed !== null) ?? yields[0] ?? null,
      yields: yields.filter((stated) => stated.parsed !== null),
      times: [...this.times, ...front.times],
      components: this.list.components,
      listings: this.list.listings,
      steps,
      notes,
      storage: this.storage,
      nutrition: this.nutrition,
      equipment: this.equipment,
      rest: inOrder([...this.rest, ...this.list.asides]),
    };
  }

  /** The head over this group of listings or steps: the section's own, or a larger one above "Ingredients" and "Method". */
  private groupFor(section: Section, head: Head | null, group: Head | null): Head | null {
    if (head === null) return section.head === null ? group : null;
    if (section.component) return head;
    const usual =
      head.kind !== null && head.kind !== 'serving' && head.kind !== 'alternative' && head.of === null;
    // "Preparation" below "Method" heads a group of its steps like any other words.
    const inner = usual && section.scope !== head.kind && section.scope !== null;
    if (!usual || inner || this.isInnerMethod(section, head)) return head;
    return group !== null && head.depth > group.depth && group.kind === null ? group : null;
  }

  private isInnerMethod(section: Section, head: Head): boolean {
    return head.kind === 'method' && section.inner;
  }

  private readHead(head: Head): void {
    if (head.extra === null) return;
    const fields = readFields(head.extra);
    if (fields !== null) this.take(fields);
    else if (head.kind === 'list' && /^(?:for )?\d/i.test(head.extra.text))
      this.yields.push(yieldValue(head.extra));
  }

  private readPiece(
    piece: Piece,
    section: Section,
    head: Head | null,
    group: Head | null,
    part: boolean,
  ): void {
    const { block, reads } = piece;
    const inMethod = section.scope === 'method' || (part && this.listedHere);
    const afterList = section.scope === null && this.listed;
    if (block.type === 'paragraph' && (inMethod || afterList)) {
      const kind = labelledKind(block.passage) ?? (inMethod ? remarkKind(block.passage.text) : null);
      if (kind !== null) {
        this.partFor(kind).push(block.passage);
        return;
      }
    }
    if (section.scope === 'list' && isTools(block)) append(this.equipment, textsOf(block));
    else if (part ? reads.list > NONE : this.isList(piece, section)) this.readList(block, group);
    else if (part ? this.isStepOfPart(piece) : this.isMethod(piece, section.scope)) {
      const seen = this.groups.get(group);
      // The heading over a list is not yet that of the steps below the list.
      if (
        seen?.listed &&
        !seen.late &&
        !section.component &&
        (section.head === null || section.head === group)
      )
        this.method.shareHeading();
      this.groups.set(group, { ...(seen ?? NEW_GROUP), stepped: true });
      this.method.add(block, section.scope === 'method' || part);
    } else if (section.scope !== null && section.scope !== 'list' && section.scope !== 'method')
      this.readPart(section.scope, block);
    else if (reads.mingled) append(this.rest, textsOf(block));
    // What a part of the recipe makes is not the yield of the whole.
    else if (part && !this.listedHere && block.type === 'paragraph' && readFields(block.passage) !== null)
      this.rest.push(block.passage);
    else this.readText(block, section, head);
  }

  /** Whether the line is an order over the listings that it is about, in a recipe that tells list and steps in turns: "Melt:". */
  private leads({ block, reads }: Piece, next: Piece | undefined, scope: HeadingKind | null): boolean {
    if (scope !== null || block.type !== 'paragraph' || (this.listed && !this.inTurns)) return false;
    if (next === undefined || next.block.type === 'paragraph' || next.reads.list === NONE) return false;
    const text = block.passage.text.trim();
    return text.endsWith(':') && (reads.method > NONE || opensAsStep(text.replace(/:$/, ' it.')));
  }

  private readLead(block: Content, group: Head | null): void {
    this.inTurns = true;
    this.groups.set(group, { ...(this.groups.get(group) ?? NEW_GROUP), stepped: true });
    this.method.add(block, true);
  }

  private readList(block: Content, group: Head | null): void {
    this.listed = true;
    this.listedHere = true;
    const seen = this.groups.get(group) ?? NEW_GROUP;
    this.groups.set(group, { ...seen, listed: true, late: seen.late || this.method.started });
    const fields = block.type === 'paragraph' ? readFields(block.passage) : null;
    if (fields !== null) this.take(fields);
    else this.list.add(block);
  }

  /** Below the list of a part stand its steps. */
  private isStepOfPart({ block, reads }: Piece): boolean {
    if (reads.method > NONE) return this.listedHere || this.surestMethod < SAID;
    if (!this.listedHere || block.type !== 'paragraph') return false;
    return opensAsStep(block.passage.text) || opensLikeOrder(block.passage.text);
  }

  /** Whether every list has steps of its own. */
  private apart(): boolean {
    const listed = [...this.groups.values()].filter((group) => group.listed);
    return listed.length > 1 && listed.every((group) => group.stepped);
  }

  /** "Blueberry Pancakes" over a few words, past the steps of "Pancakes", tells how else the dish is made. */
  private isVariation(section: Section, head: Head | null): boolean {
    if (
      head === null ||
      head.kind !== null ||
      head.of !== null ||
      this.title === null ||
      !this.method.started
    )
      return false;
    // "Cake" and "Finishing the cake" are parts of it, and so is all that stands inside of the method.
    const { text } = head.passage;
    if (
      section.scope !== null ||
      !/\p{L}\s+\p{L}/u.test(text) ||
      /\s(?:the|a|your)\s/i.test(text) ||
      instructs(text)
    )
      return false;
    if (section.pieces.some(({ block }) => block.type !== 'paragraph')) return false;
    return lastWord(text) === lastWord(this.title.text) && text !== this.title.text;
  }

  private isList({ reads, block }: Piece, section: Section): boolean {
    if (reads.list === SAID || (section.scope === 'list' && block.type === 'table')) return true;
    if (reads.list === NONE) return false;
    // What stands below a heading for the method is only a list where the recipe has no other.
    if (section.scope === 'method') return this.surestList === POSSIBLE;
    if (this.inTurns) return true;
    // Before the method a list that may be one is one, unless a heading says which is.
    return reads.list >= Math.min(this.surestList, CLEAR) || (this.surestList < SAID && !this.method.started);
  }

  private isMethod({ reads, block }: Piece, scope: HeadingKind | null): boolean {
    if (reads.method === SAID) return true;
    // Where nothing reads as a method, the text after a list without headings must be it.
    if (this.surestMethod === NONE && this.listed && scope === null && block.type === 'paragraph') {
      return readFields(block.passage) === null && labelledKind(block.passage) === null;
    }
    if (this.surestMethod === SAID) return false;
    if (reads.method === NONE) return this.isAmongSteps(block, scope);
    if (this.stepsFirst && reads.method === CLEAR) return true;
    return this.listed || this.list.listings.length > 0;
  }

  /** "Get the pan hot", after the first step of a method without a heading, is a step though its verb is no cook's. */
  private isAmongSteps(block: Content, scope: HeadingKind | null): boolean {
    if (scope !== null || !this.listed || !this.method.started || block.type !== 'paragraph') return false;
    const { text } = block.passage;
    return (
      (opensAsStep(text) || opensLikeOrder(text)) &&
      labelledKind(block.passage) === null &&
      remarkKind(text) === null
    );
  }

  /** Text that no heading and no wording claims: it belongs by its place. */
  private readText(block: Content, section: Section, head: Head | null): void {
    const stated = block.type === 'table' ? tableFields(block) : null;
    if (stated !== null) {
      this.take(stated);
      return;
    }
    for (const passage of textsOf(block).flatMap(partedAtFields)) {
      const fields = readFields(passage);
      if (fields !== null) {
        this.take(fields);
        continue;
      }
      const remark = section.scope === 'list' ? (yieldRemark(passage) ?? yieldSentence(passage)) : null;
      if (remark !== null) {
        this.yields.push(remark);
        if (remark.passage.text.length + 1 >= passage.text.trim().length) continue;
      }
      const kind = labelledKind(passage);
      if (kind !== null) this.partFor(kind).push(passage);
      else if (this.method.started) this.notes.push(passage);
      else if (section.scope === 'list' || this.listed) this.rest.push(passage);
      else this.readHeadnote(passage, head);
    }
  }

  private readHeadnote(passage: Passage, head: Head | null): void {
    if (this.title === null && this.headnote.length === 0 && head === null && isTitle(passage)) {
      this.title = passage;
      return;
    }
    const alone = countAlone(passage);
    const stated = alone ?? yieldSentence(passage);
    if (stated !== null) this.yields.push(stated);
    if (alone === null && (stated === null || stated.passage.text.length + 1 < passage.text.length))
      this.headnote.push(passage);
  }

  private readPart(kind: HeadingKind, block: Content): void {
    const texts = textsOf(block);
    if (kind === 'yield' || kind === 'times') {
      for (const text of texts) {
        const fields = readFields(text);
        if (fields !== null) this.take(fields);
        else if (kind === 'yield' && wordCount(text.text) < 12) this.yields.push(yieldValue(text));
        else if (kind === 'times' && startsWithAmount(text.text))
          this.times.push(timeValue('time-total', text, text));
        else this.rest.push(text);
      }
    } else append(this.partFor(kind), texts);
  }

  private partFor(kind: HeadingKind): Passage[] {
    if (kind === 'storage') return this.storage;
    if (kind === 'nutrition') return this.nutrition;
    if (kind === 'equipment') return this.equipment;
    if (kind === 'notes' || kind === 'serving') return this.notes;
    return kind === 'headnote' ? this.headnote : this.rest;
  }

  private take(fields: Fields): void {
    this.yields.push(...fields.yields);
    this.times.push(...fields.times);
  }

  private span(): Span {
    let start = Number.POSITIVE_INFINITY;
    let end = 0;
    const widen = (span: Span): void => {
      start = Math.min(start, span.start);
      end = Math.max(end, span.end);
    };
    for (const section of this.outline.sections) {
      if (section.head !== null) widen(section.head.span);
      for (const piece of section.pieces) widen(piece.block.span);
    }
    if (
      this.title !== null &&
      this.naming.front &&
      this.title === this.naming.title &&
      this.outline.head === null
    ) {
      // The front matter opens with its fence, which is as far up as the file goes.
      start = Math.min(start, this.page.text.charCodeAt(0) === 0xfeff ? 1 : 0);
    }
    return { start: Math.min(start, end), end };
  }
}

/** Whether the section is a part with a list of its own under a name. */
function isPart(section: Section, head: Head | null): boolean {
  if (section.component) return true;
  return head !== null && section.scope === null && section.pieces.some(({ reads }) => reads.list >= CLEAR);
}

function lastWord(text: string): string {
  return /(\p{L}+)\P{L}*$/u.exec(text.replace(/\s*\(.*$/, ''))?.[1]?.toLowerCase() ?? '';
}

/** Sorted by place: they were gathered by more than one hand. */
function inOrder(passages: Passage[]): Passage[] {
  return passages.sort((a, b) => a.span().start - b.span().start);
}

/** A list may be longer than a call may have arguments. */
function append(to: Passage[], texts: readonly Passage[]): void {
  for (const text of texts) to.push(text);
}
