/** The summary of the query sheet: how many marks of which weight, by rule and by recipe, as small plots that can be read aloud. */
import type { Mark, Weight } from '../../../rules/rule.js';
import { countMarks } from '../closing.js';
import { capitalized, countOf, joined } from '../words.js';
import { type Markup, markup } from './markup.js';

/** One line of a plot. */
export interface Tally {
  readonly name: string;
  /** Where on the page the line leads to. */
  readonly target: string;
  readonly marks: readonly Mark[];
}

/** The longest lines first; lines past `most` are told in one sentence. `of` says what each line is: "rule". */
export function plot(of: string, tallies: readonly Tally[], most: number): Markup {
  const sorted = tallies.toSorted((one, other) => other.marks.length - one.marks.length);
  const shown = sorted.slice(0, most);
  const longest = Math.max(1, ...shown.map(({ marks }) => marks.length));
  const rest = sorted.slice(most);
  const restMarks = rest.reduce((sum, { marks }) => sum + marks.length, 0);
  return markup`<table class="plot">
<caption>Marks by ${of}</caption>
<thead><tr><th scope="col">${capitalized(of)}</th><th scope="col">Marks</th><th scope="col" class="count">Count</th></tr></thead>
<tbody>
${shown.map((tally) => line(tally, longest))}</tbody>
</table>
${rest.length === 0 ? [] : [markup`<p class="rest">And ${countOf(restMarks, 'mark', 'marks')} in ${countOf(rest.length, `more ${of}`, `more ${of}s`)}.</p>\n`]}`;
}

/** Hatching tells queries from faults where there is no color: in print, or to some eyes. */
export const hatching: Markup = markup`<svg class="defs" aria-hidden="true" width="0" height="0"><defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="hatch-ground" width="5" height="5"/><rect class="hatch-line" width="2.2" height="5"/></pattern></defs></svg>`;

/** How many of the marks have each weight, the heaviest first; weights that none has are left out. */
export function byWeight(marks: readonly Mark[]): { readonly weight: Weight; readonly count: number }[] {
  return weights
    .map((weight) => ({ weight, count: marks.filter((mark) => mark.weight === weight).length }))
    .filter(({ count }) => count > 0);
}

const weights: readonly Weight[] = ['fault', 'query', 'note'];

function line({ name, target, marks }: Tally, longest: number): Markup {
  const counts = byWeight(marks);
  const said = joined(counts.map(({ weight, count }) => countMarks(weight, count)));
  let from = 0;
  const bars = counts.map(({ weight, count }) => {
    const bar = markup`<rect class="bar-${weight}" x="${percent(from, longest)}" width="${percent(count, longest)}" height="12"/>`;
    from += count;
    return bar;
  });
  return markup`<tr><th scope="row"><a href="#${target}">${name}</a></th><td><svg role="img" aria-label="${said}" width="100%" height="12">${bars}</svg></td><td class="count">${marks.length}</td></tr>\n`;
}

function percent(part: number, whole: number): string {
  return `${((part / whole) * 100).toFixed(2)}%`;
}
