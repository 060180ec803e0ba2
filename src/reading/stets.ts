/** Takes away the marks that the author has let stand, keeps the reasons, and counts what each stet silences. */
import type { Mark } from '../../rules/rule.js';
import type { Page, Stet } from '../manuscript/types.js';
import type { Stetted } from './types.js';

/** Where a recipe stands, and what its marks call it. */
export interface RecipePlace {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly title: string | null;
}

export interface Settled {
  readonly standing: readonly Mark[];
  readonly stetted: readonly Stetted[];
  /** How many marks each stet silences. */
  readonly silenced: ReadonlyMap<Stet, number>;
}

/** A place that a mark is about. */
type Place = Pick<Mark, 'file' | 'span'>;

/**
 * The marks that stand, and those that a stet silences: one on their line, one for their recipe or one for their file.
 * A stet that names no rule silences them all. Where a mark speaks of many places alike, each place is asked by itself,
 * and the mark goes on to the first that is left. `isOff` tells where the house style has turned the rule off.
 */
export function applyStets(
  pages: readonly Page[],
  recipes: readonly RecipePlace[],
  marks: readonly Mark[],
  isOff: (mark: Mark, file: string) => boolean,
): Settled {
  const stetFor = stetFinder(pages, recipes);
  const standing: Mark[] = [];
  const stetted: Stetted[] = [];
  const silenced = new Map<Stet, number>();
  for (const mark of marks) {
    const kept: Place[] = [];
    for (const place of placesOf(mark)) {
      if (isOff(mark, place.file)) continue;
      const stet = stetFor(place, mark.rule);
      if (stet === null) {
        kept.push(place);
        continue;
      }
      silenced.set(stet, (silenced.get(stet) ?? 0) + 1);
      stetted.push({ mark: movedTo(mark, place, recipes), reason: stet.reason, stet });
    }
    if (kept.length > 0) standing.push(withPlaces(mark, kept, recipes));
  }
  return { standing, stetted, silenced };
}

/** Its own place, and those where the same is to be said. */
function placesOf(mark: Mark): Place[] {
  return [mark, ...mark.related.filter((related) => related.alike === true)];
}

function withPlaces(mark: Mark, kept: readonly Place[], recipes: readonly RecipePlace[]): Mark {
  const [first] = kept;
  const all = placesOf(mark);
  if (kept.length === all.length) return mark;
  const related = mark.related.filter(
    (each) => each.alike !== true || (kept.includes(each) && each !== first),
  );
  return { ...movedTo(mark, first!, recipes), related };
}

function movedTo(mark: Mark, place: Place, recipes: readonly RecipePlace[]): Mark {
  if (place === mark) return mark;
  return { ...mark, file: place.file, span: place.span, recipe: recipeAt(recipes, place)?.title ?? null };
}

function recipeAt(recipes: readonly RecipePlace[], { file, span }: Place): RecipePlace | null {
  return (
    recipes.find((each) => each.file === file && each.start <= span.start && span.start <= each.end) ?? null
  );
}

function stetFinder(
  pages: readonly Page[],
  recipes: readonly RecipePlace[],
): (place: Place, rule: string) => Stet | null {
  const pageOf = new Map(pages.map((page) => [page.path, page]));
  const byPlace = new Map<string, Stet[]>();
  for (const page of pages) {
    for (const stet of page.stets) {
      const key = keyOf(page.path, targetOf(stet, page, recipes));
      const same = byPlace.get(key);
      if (same === undefined) byPlace.set(key, [stet]);
      else same.push(stet);
    }
  }
  if (byPlace.size === 0) return () => null;
  return (place, rule) => {
    const page = pageOf.get(place.file);
    if (page === undefined || page.stets.length === 0) return null;
    const recipe = recipeAt(recipes, place);
    const near = [
      ...(byPlace.get(keyOf(page.path, page.lines.line(place.span.start))) ?? []),
      ...(recipe === null ? [] : (byPlace.get(keyOf(page.path, recipe)) ?? [])),
      ...(byPlace.get(keyOf(page.path, null)) ?? []),
    ];
    // The one that names the rule answers for it, so that a stet for everything beside it is seen to be idle.
    return (
      near.find(({ rules }) => rules.includes(rule)) ?? near.find(({ rules }) => rules.length === 0) ?? null
    );
  };
}

/** The line, the recipe or (null) the file that a stet speaks for. One for a recipe may stand in it, above its title or at its end. */
function targetOf(stet: Stet, page: Page, recipes: readonly RecipePlace[]): number | RecipePlace | null {
  if (stet.scope === 'file') return null;
  if (stet.scope === 'line') return stet.line;
  const line = { start: page.lines.start(stet.line), end: page.lines.start(stet.line + 1) };
  const own = recipes.filter(({ file }) => file === page.path);
  return (
    own.find(({ start, end }) => start <= stet.span.start && stet.span.start <= end) ??
    own.find(({ start, end }) => start < line.end && line.start <= end) ??
    own.findLast(({ end }) => end <= stet.span.start) ??
    own[0] ??
    stet.line
  );
}

function keyOf(path: string, target: number | RecipePlace | null): string {
  if (target === null) return `file ${path}`;
  return typeof target === 'number' ? `${target} ${path}` : `recipe ${target.start} ${path}`;
}
