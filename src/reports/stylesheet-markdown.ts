/** Writes a style sheet as Markdown, for the editor who goes over the book with it. */
import type { StylesheetEntry, StylesheetReport } from './stylesheet-schema.js';
import { visible } from './text.js';
import { capitalized, countOf } from './words.js';

export function stylesheetMarkdown(sheet: StylesheetReport): string {
  const parts = [
    '# Style sheet',
    `Compiled from ${countOf(sheet.recipes, 'recipe', 'recipes')}. Numbers in parentheses say how often; where there are several forms, the places of all but the most used follow. What is written in more than one way is in bold. Amounts, temperatures and times are compared by the tolerances of ${sheet.tolerances}.`,
    ...section('Foods', sheet.foods),
    ...section('Spellings', sheet.spellings),
    ...section('Units', sheet.units),
    ...section('Numbers that are not whole', sheet.numbers),
    ...section('Ranges', sheet.ranges),
    ...section('Temperatures', sheet.temperatures),
    ...section('Yields', sheet.yields),
    ...section('Lines of the list that open with a word', sheet.listings),
    ...section('Equivalents', sheet.equivalents),
    ...section('Pans and other vessels', sheet.pans),
    ...section(
      'References',
      sheet.references.map(({ found, ...entry }) =>
        found || PAGE.test(entry.about) ? entry : { ...entry, about: `${entry.about} (not in the book)` },
      ),
      true,
    ),
    ...section('Words from other languages', sheet.foreign),
    ...titles(sheet),
  ];
  return `${parts.join('\n\n')}\n`;
}

/** A page that is given without a name. */
const PAGE = /^pages? [\p{N}Xx]+$/u;

function section(heading: string, entries: readonly StylesheetEntry[], allPlaces = false): string[] {
  if (entries.length === 0) return [];
  const rows = entries.map(({ about, forms }) => {
    const [first, ...others] = forms;
    const name = forms.length > 1 ? `**${cell(about)}**` : cell(about);
    const places = (allPlaces ? forms : others).map(
      (form) => `${cell(form.form)}: ${placesText(form.places)}`,
    );
    const written = [first!, ...others].map(({ form, count }) => `${cell(form)} (${count})`).join(', ');
    return `| ${name} | ${written} | ${places.join('; ')} |`;
  });
  return [`## ${heading}`, ['| | written | where |', '| --- | --- | --- |', ...rows].join('\n')];
}

/** More places than these are told by their number: who goes over them searches for the form. */
const MOST_PLACES = 6;

function placesText(places: StylesheetEntry['forms'][number]['places']): string {
  const told = places.slice(0, MOST_PLACES).map(({ file, line }) => `${cell(file)} ${line}`);
  const more = places.length - told.length;
  return told.join(', ') + (more > 0 ? ` and ${more} more` : '');
}

function titles({ titles: all }: StylesheetReport): string[] {
  if (all.length === 0) return [];
  const rows = all.map(
    ({ title, capitals, file, line }) => `| ${cell(title)} | ${capitals ?? ''} | ${cell(file)} ${line} |`,
  );
  const counts = new Map<string, number>();
  for (const { capitals } of all)
    if (capitals !== null) counts.set(capitals, (counts.get(capitals) ?? 0) + 1);
  const told = [...counts].map(([form, count]) => `${form.toLowerCase()} ${count}`).join(', ');
  return [
    '## Titles',
    ...(told === '' ? [] : [`${capitalized(told)}.`]),
    ['| title | capitals | where |', '| --- | --- | --- |', ...rows].join('\n'),
  ];
}

/** The author's text in a cell of a table: on one line, and read as it is written. */
function cell(text: string): string {
  return visible(text.replace(/\s+/g, ' ').trim()).replace(/[\\|*_`<[\]]/g, String.raw`\$&`);
}
