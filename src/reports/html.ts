/** Writes a reading as the query sheet that an editor sends to an author: one page by itself, to be read, answered and printed. */
import { createHash } from 'node:crypto';
import type { Rule } from '../../rules/rule.js';
import { fingerprintsOf } from '../reading/fingerprints.js';
import type { Reading } from '../reading/types.js';
import { version } from '../version.js';
import { caution } from './caution.js';
import { closing, countMarks } from './closing.js';
import { groupMarks } from './groups.js';
import { placesOf } from './places.js';
import { type Markup, markup, verbatim } from './sheet/markup.js';
import { chapters, nameOf } from './sheet/queries.js';
import { script } from './sheet/script.js';
import { style } from './sheet/style.js';
import { byWeight, hatching, plot } from './sheet/summary.js';
import { hasTopic } from './topics.js';
import { countOf, curled } from './words.js';

/** `ran` are the rules that were run; every mark is of one of them. */
export function html(reading: Reading, ran: readonly Rule[]): string {
  const groups = groupMarks(reading).map((group, index) => ({ ...group, id: `recipe-${index + 1}` }));
  const asking = ran
    .map((rule) => ({ rule, marks: reading.marks.filter((mark) => mark.rule === rule.name) }))
    .filter(({ marks }) => marks.length > 0);
  const parts = { places: placesOf(reading), fingerprints: fingerprintsOf(reading), groups };
  const page = markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>Query sheet</title>
<style>${verbatim(style)}</style>
</head>
<body>
<a class="skip" href="#queries">Skip to the queries</a>
${hatching}
<header>
<h1>Query sheet</h1>
<p class="closing">${closing(reading, ran)}</p>
${hasTopic(reading.marks, ran, 'safety') ? [markup`<p class="caution">${caution}</p>\n`] : []}</header>
<main>
${reading.marks.length === 0 ? [] : summary(asking, groups)}
<div id="queries" tabindex="-1">
${chapters(parts)}</div>
${reading.marks.length === 0 ? [] : reasons(asking)}</main>
<footer><p>Read by tamis ${version}.</p></footer>
<script>${verbatim(script)}</script>
</body>
</html>
`;
  return page.html;
}

/** Nothing is loaded, sent or run but this page's own style and script, known by their hashes. */
const policy = [
  "default-src 'none'",
  `style-src '${hashOf(style)}'`,
  `script-src '${hashOf(script)}'`,
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

function hashOf(text: string): string {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

type Asking = readonly { readonly rule: Rule; readonly marks: Reading['marks'] }[];

/** Lines of a plot; more would push the queries off the first pages. */
const mostLines = 12;

function summary(asking: Asking, groups: Parameters<typeof chapters>[0]['groups']): Markup[] {
  const byRule = asking.map(({ rule, marks }) => ({ name: rule.name, target: `rule-${rule.name}`, marks }));
  const byRecipe = groups.map((group) => ({ name: nameOf(group), target: group.id, marks: group.marks }));
  const all = groups.map(
    (group) => markup`<li><a href="#${group.id}"><bdi>${nameOf(group)}</bdi></a></li>\n`,
  );
  return [
    markup`<section class="summary" aria-labelledby="summary">
<h2 id="summary">What is asked</h2>
<p>Each place below needs a word from you. The recipe and the number are its name, here and in every letter about it. Write the answer beneath it; where the passage is to stand as it is, write “stet” and why.</p>
<dl class="legend">
<div class="fault"><dt>fault</dt><dd>The page contradicts itself, its arithmetic is wrong, or it is unsafe.</dd></div>
<div class="query"><dt>query</dt><dd>Only you can answer.</dd></div>
<div class="note"><dt>note</dt><dd>Style or advice.</dd></div>
</dl>
<div class="plots">
<div>${plot('rule', byRule, mostLines)}</div>
<div>${plot('recipe', byRecipe, mostLines)}</div>
</div>
${groups.length > mostLines ? [markup`<nav aria-label="All recipes with marks"><details><summary>All recipes with marks</summary>\n<ul>\n${all}</ul>\n</details></nav>\n`] : []}</section>
${filters(asking)}`,
  ];
}

/** Hidden until the script is there to serve them. */
function filters(asking: Asking): Markup {
  const marks = asking.flatMap((each) => each.marks);
  const boxes = byWeight(marks).map(
    ({ weight, count }) =>
      markup`<label><input type="checkbox" name="weight" value="${weight}" checked> ${countMarks(weight, count)}</label>\n`,
  );
  const choices = asking.map(
    ({ rule, marks: own }) => markup`<option value="${rule.name}">${rule.name} (${own.length})</option>\n`,
  );
  return markup`<section id="tools" class="tools" aria-label="Filters and answers" hidden>
<fieldset><legend>Show</legend>
${boxes}</fieldset>
<p><label for="rule">Rule</label> <select id="rule">
<option value="">All rules</option>
${choices}</select></p>
<p><button type="button" id="save">Save the answers</button> <button type="button" id="print">Print</button></p>
<p id="shown" role="status">Showing all of ${countOf(marks.length, 'mark', 'marks')}.</p>
<p id="kept" class="kept"></p>
</section>
`;
}

function reasons(asking: Asking): Markup[] {
  const rows = asking.map(
    ({ rule: { name, summary: what, why }, marks }) =>
      markup`<div id="rule-${name}"><dt>${name} <span class="times">${countOf(marks.length, 'mark', 'marks')}</span></dt><dd>${curled(what)} ${curled(why)}</dd></div>\n`,
  );
  return [
    markup`<section class="reasons" aria-labelledby="reasons">
<h2 id="reasons">Why we ask</h2>
<dl>
${rows}</dl>
</section>
`,
  ];
}
