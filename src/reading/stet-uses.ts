/** Says of every stet what came of it: what it silenced, and which of its names no rule has. */
import { closest } from 'fastest-levenshtein';
import type { Rule, StetUse } from '../../rules/rule.js';
import { type HouseStyle, rulingOn } from '../manuscript/house-style.js';
import type { Page, Stet } from '../manuscript/types.js';
import type { RecipePlace } from './stets.js';

/** All stets of the pages, in order. `chosen` are the rules that were run, `all` those that there are. */
export function stetUses(
  pages: readonly Page[],
  recipes: readonly RecipePlace[],
  silenced: ReadonlyMap<Stet, number>,
  chosen: readonly Rule[],
  all: readonly Rule[],
  style: HouseStyle,
): StetUse[] {
  const names = all.map((rule) => rule.name);
  const wasRun = (page: Page, name: string): boolean =>
    chosen.some((rule) => rule.name === name) && rulingOn(style, page.path, name) !== 'off';
  return pages.flatMap((page) =>
    page.stets.map((stet) => ({
      page,
      stet,
      recipe:
        recipes.find(
          ({ file, start, end }) => file === page.path && start <= stet.span.start && stet.span.start <= end,
        )?.title ?? null,
      silenced: silenced.get(stet) ?? 0,
      judged:
        stet.rules.length === 0
          ? chosen.length === all.length
          : stet.rules.every((name) => wasRun(page, name)),
      unknown: stet.rules
        .filter((name) => !names.includes(name))
        .map((name) => ({ name, nearest: closest(name, names) })),
    })),
  );
}
