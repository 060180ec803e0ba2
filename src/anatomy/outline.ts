/** Finds which sections of a page make up a recipe, and which heading names it. Chapters, essays and lists of other things are left. */
import { CLEAR, NONE, POSSIBLE, SAID } from './evidence.js';
import { readFields, yieldSentence } from './fields.js';
import { BOLD_DEPTH, type Head, namesPart } from './heads.js';
import type { Section } from './sections.js';
import { partedAtFields, textsOf } from './texts.js';

/** The sections of one recipe, in order. */
export interface Outline {
  readonly head: Head | null;
  readonly sections: readonly Section[];
}

/** A heading that may be a title, with the sections below it. The first of `sections` is its own; a root's may be headless. */
interface Node {
  readonly section: Section | null;
  readonly depth: number;
  readonly own: Section[];
  readonly kids: Node[];
  /** Sections that stand below it only because a usual heading of the same depth follows it. */
  readonly lenient: Set<Section>;
  /** Its own sections and those of its kids, in the page's order; made when first asked for. */
  all?: Section[];
}

/** `titled` says that the file has a title of its own, in the front matter. */
export function outlinesOf(sections: readonly Section[], titled: boolean): Outline[] {
  const segments = segmentsOf(sections);
  const outlines: Outline[] = [];
  for (const segment of segments) resolve(treeOf(segment), titled && segments.length === 1, true, outlines);
  return outlines;
}

/** Thematic breaks part recipes where at least two of the parts are whole recipes; elsewhere they are ornament. */
function segmentsOf(sections: readonly Section[]): (readonly Section[])[] {
  const segments: Section[][] = [[]];
  for (const section of sections) {
    if (section.parted) segments.push([]);
    segments.at(-1)!.push(section);
  }
  const whole = segments.filter((segment) => isWhole(weigh(segment))).length;
  return whole > 1 ? segments : [sections];
}

function treeOf(sections: readonly Section[]): Node {
  const root: Node = { section: null, depth: 0, own: [], kids: [], lenient: new Set() };
  const open: Node[] = [root];
  for (const section of sections) {
    const depth = section.head?.depth ?? Number.POSITIVE_INFINITY;
    if (section.candidate && section.head !== null) {
      while (open.length > 1 && open.at(-1)!.depth >= depth) open.pop();
      const node: Node = { section, depth, own: [section], kids: [], lenient: new Set() };
      open.at(-1)!.kids.push(node);
      open.push(node);
      continue;
    }
    while (open.length > 1 && open.at(-1)!.depth > depth && !titles(open, section)) open.pop();
    const node = open.at(-1)!;
    node.own.push(section);
    if (node.depth >= depth) node.lenient.add(section);
  }
  return root;
}

/** Whether the open bold line is the title of the recipe whose list this section opens, under a larger heading than its own. */
function titles(open: readonly Node[], section: Section): boolean {
  const node = open.at(-1)!;
  const parent = open.at(-2)!;
  const depth = section.head?.depth ?? 0;
  // What goes with the headings that it already took stays with it.
  if ([...node.lenient].some((taken) => taken.head !== null && taken.head.depth <= depth)) return true;
  if (node.depth < BOLD_DEPTH || section.scope !== 'list') return false;
  if (node.own.length > 1 || weigh(node.own).list > NONE) return false;
  return parent.section === null || parent.kids.length > 1;
}

function resolve(node: Node, titled: boolean, isRoot: boolean, into: Outline[]): void {
  const all = sectionsIn(node);
  const total = weigh(all);
  const parts = partsOf(node, titled && isRoot);
  const whole = wholeKids(node).filter((kid) => !parts.has(kid));
  const likely = new Set(whole);
  const emit = (sections: readonly Section[]): void =>
    void into.push({ head: node.section?.head ?? null, sections });
  const own = weigh(node.own);
  if (whole.length === 0) {
    if (isWhole(total)) emit(all);
    else if (own.list === SAID || own.method === SAID || parts.size > 0) emit(all);
    // Nothing but amounts of foods is a recipe whose method is still to be written.
    else if (node.kids.length === 0 && own.bare && own.list === CLEAR) emit(all);
    else for (const kid of node.kids) resolve(kid, titled, false, into);
    return;
  }
  if (whole.length === 1 && !isWhole(own) && absorbs(node, whole[0]!, titled, isRoot)) {
    emit(all);
    return;
  }
  if (own.list === SAID || own.method === SAID || isWhole(own)) {
    const others = new Set(whole.flatMap(sectionsIn));
    emit(all.filter((section) => !others.has(section)));
    resolveAll(whole);
  } else resolveAll(node.kids);

  function resolveAll(kids: readonly Node[]): void {
    for (const kid of kids) {
      const sections = sectionsIn(kid);
      if (likely.has(kid) && !isWhole(weigh(sections)))
        into.push({ head: kid.section?.head ?? null, sections });
      else resolve(kid, titled, false, into);
    }
  }
}

/** The kids that are whole recipes; beside one, a list with text after it is another, in words that we do not know. */
function wholeKids(node: Node): Node[] {
  const sure = new Set(node.kids.filter((kid) => isWhole(weigh(sectionsIn(kid)))));
  return sure.size === 0 ? [] : node.kids.filter((kid) => sure.has(kid) || hasTextAfterList(sectionsIn(kid)));
}

function hasTextAfterList(sections: readonly Section[]): boolean {
  let listed = false;
  for (const { scope, pieces } of sections) {
    for (const { block, reads } of pieces) {
      if (reads.list >= CLEAR) listed = true;
      else if (
        listed &&
        scope === null &&
        block.type === 'paragraph' &&
        !block.passage.text.trim().endsWith(':')
      )
        return true;
    }
  }
  return false;
}

/** Whether the one whole recipe among a heading's parts is rather a part of the recipe that the heading names. */
function absorbs(node: Node, kid: Node, titled: boolean, isRoot: boolean): boolean {
  const own = weigh(node.own);
  const others = node.kids.filter((other) => other !== kid).map((other) => weigh(sectionsIn(other)));
  const shared =
    own.list >= CLEAR ||
    own.method >= CLEAR ||
    others.some((other) => other.list >= CLEAR || other.method >= CLEAR);
  const inside = sectionsIn(kid).filter((section) => !kid.lenient.has(section));
  const named = inside.some((section) => section.scope === 'list' && section.head !== null);
  if (!isWhole(weigh(inside))) return shared || !isRoot || titled;
  if (named) return false;
  return shared || (kid.depth >= BOLD_DEPTH && (!isRoot || titled));
}

/**
 * The kids that are whole, and yet parts of the recipe that the node names: a slaw below the method of the tacos, or the
 * custard and the cake of a trifle.
 */
function partsOf(node: Node, titledRoot: boolean): ReadonlySet<Node> {
  const none: ReadonlySet<Node> = new Set();
  if ((node.section === null && !titledRoot) || node.kids.length === 0) return none;
  const all = wholeKids(node);
  if (all.length === 0 || all.some((kid) => wholeKids(kid).length > 0)) return none;
  const own = weigh(node.own);
  const whole = all.filter((kid) => !hasListHead(kid));
  if (own.list === SAID && own.method === SAID) return new Set(whole);
  // A bold line is smaller than any title above it; a heading with a yield of its own is a recipe.
  if (isWhole(own)) {
    const said = own.list === SAID || own.method === SAID;
    return new Set(whole.filter((kid) => said || kid.depth >= BOLD_DEPTH || !stateOf(kid).value));
  }
  const stated = all.map(stateOf);
  // A yield and a list above, and one heading below that holds the method as well: its list is a component's.
  const lacksMethod = own.list > NONE && own.method === NONE && all.length === 1;
  if (lacksMethod && stateOf(node).value && !stated[0]!.value) return new Set(all);
  if (own.list > NONE || all.length < 2 || stated.some((said) => said.value)) return none;
  const named = all.every(namesKid);
  const told = stated.some((said) => said.text) || whole.length < all.length;
  const top = node.section === null ? null : stateOf(node);
  if (top?.value === true) return named || (top.fields && !told) ? new Set(all) : none;
  return named && !told && areParts(all, top?.text === true) ? new Set(all) : none;
}

function namesKid(kid: Node): boolean {
  return kid.section?.head != null && namesPart(kid.section.head.passage.text);
}

/**
 * Without a yield over them, names tell parts from recipes: "Custard" and "Cake" are parts, "Lemon custard" may be a recipe,
 * "Mint sauce" and "Bread sauce" are two. A word on the dish above them lets one name of a part speak for the others.
 */
function areParts(kids: readonly Node[], introduced: boolean): boolean {
  const names = kids.map((kid) => kid.section!.head!.passage.text.toLowerCase());
  const bare = names.filter((name) => !/\p{L}\s+\p{L}/u.test(name)).length;
  const lasts = new Set(names.map((name) => /(\p{L}+)\P{L}*$/u.exec(name)?.[1]));
  return lasts.size === kids.length && (introduced ? bare > 0 : bare === kids.length);
}

function hasListHead(kid: Node): boolean {
  return sectionsIn(kid).some(
    (section) => section.scope === 'list' && section.head !== null && section.head.kind === 'list',
  );
}

/** What a heading says before its first list: whether it states a yield or times, and whether it tells of the dish. */
function stateOf(node: Node): { value: boolean; fields: boolean; text: boolean } {
  let value = false;
  let fields = false;
  let text = false;
  for (const { block, reads } of node.own[0]?.pieces ?? []) {
    if (reads.list > NONE || (reads.method > POSSIBLE && block.type !== 'paragraph')) break;
    for (const passage of textsOf(block).flatMap(partedAtFields)) {
      if (readFields(passage) !== null) fields = true;
      else if (yieldSentence(passage) !== null) value = true;
      else text = true;
    }
  }
  return { value: value || fields, fields, text };
}

function sectionsIn(node: Node): Section[] {
  // A usual heading after a kid may have gone back to the node itself, so the page's order is restored.
  node.all ??= [...node.own, ...node.kids.flatMap(sectionsIn)].sort((a, b) => a.order - b.order);
  return node.all;
}

interface Weight {
  list: number;
  method: number;
  bare: boolean;
}

/** The surest list and method among the sections. What may be a method counts only after a list. */
function weigh(sections: readonly Section[]): Weight {
  const weight: Weight = { list: NONE, method: NONE, bare: false };
  for (const section of sections) {
    if (section.scope === 'list' && section.head !== null) weight.list = SAID;
    if (section.scope === 'method' && section.head !== null) weight.method = SAID;
    for (const { reads } of section.pieces) {
      if (reads.list > weight.list) weight.list = reads.list;
      if (reads.method > weight.method && (weight.list > NONE || reads.method > POSSIBLE))
        weight.method = reads.method;
      if (reads.bare) weight.bare = true;
    }
  }
  return weight;
}

/** A clear list with any method, or a possible one with a clear method. */
function isWhole(weight: Weight): boolean {
  return (weight.list >= CLEAR && weight.method > NONE) || (weight.list > NONE && weight.method >= CLEAR);
}
