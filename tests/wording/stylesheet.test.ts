/** The style sheet of the corpus against counts taken by plain search over the same texts; skipped where the corpus is missing. */
import { describe, expect, it } from 'vitest';
import { textsOf } from '../../src/kitchen/wording/wording.js';
import { readManuscript } from '../../src/reading/read.js';
import { reportStylesheet } from '../../src/reports/stylesheet.js';
import { corpusIn } from '../accuracy/plants.js';

const files = corpusIn('../shared/corpus/public-domain');

describe.skipIf(files === null)('the style sheet of the corpus', () => {
  const reading = readManuscript(files ?? [], { only: [] });
  const sheet = reportStylesheet(reading);
  const texts = reading.dishes.flatMap((dish) => textsOf(dish.recipe).map((passage) => passage.text));
  const found = (pattern: RegExp): number =>
    texts.reduce((sum, text) => sum + [...text.matchAll(pattern)].length, 0);

  /** Names that stand in no other food's name, so that a plain search for the words is a fair count. */
  const terms: readonly (readonly [food: string, forms: Readonly<Record<string, RegExp>>])[] = [
    ['zucchini', { zucchini: /\bzucchinis?\b/gi, courgette: /\bcourgettes?\b/gi }],
    [
      'scallion',
      {
        scallion: /\bscallions?\b(?!\s+(?:whites|greens))/gi,
        'green onion': /\bgreen[\s-]onions?\b/gi,
        'spring onion': /\bspring onions?\b/gi,
      },
    ],
    ['eggplant', { eggplant: /\beggplants?\b/gi, aubergine: /\baubergines?\b/gi }],
    ['cornstarch', { 'corn starch': /\bcorn starch\b/gi, cornstarch: /\bcornstarch\b/gi }],
    ['cilantro', { cilantro: /\bcilantro\b/gi }],
    ['mayonnaise', { mayonnaise: /(?<!light )\bmayonnaise\b/gi, mayo: /\bmayo\b/gi }],
    [
      'paprika',
      { paprika: /(?<!smoked |sweet |hot |Hungarian |spanish )\bpaprika\b/gi, paprica: /\bpaprica\b/gi },
    ],
    ['bay leaf', { 'bay leaf': /\bbay[\s-]lea(?:f|ves|fs)\b/gi, bayleaf: /\bbaylea(?:f|ves)\b/gi }],
    ['turmeric', { tumeric: /\btumeric\b(?! powder)/gi, turmeric: /(?<!ground )\bturmeric\b(?! powder)/gi }],
    ['baking powder', { 'baking powder': /\bbaking powder\b/gi }],
  ];

  it.each(terms)('counts %s by each of its names as a plain search does', (food, forms) => {
    const entry = sheet.foods.find(({ about }) => about === food);
    const counted = Object.fromEntries(entry?.forms.map(({ form, count }) => [form, count]) ?? []);
    const searched = Object.fromEntries(
      Object.entries(forms).map(([form, pattern]) => [form, found(pattern)]),
    );
    expect(Object.fromEntries(Object.keys(forms).map((form) => [form, counted[form] ?? 0]))).toEqual(
      searched,
    );
  });

  const searchedText = reading.dishes.flatMap(({ recipe }) => [
    ...recipe.headnote.map(({ text }) => text),
    ...recipe.listings.map(({ passage }) => passage.text),
    ...recipe.steps.map(({ passage }) => passage.text),
    ...recipe.notes.map(({ text }) => text),
    ...recipe.storage.map(({ text }) => text),
  ]);
  const forms = sheet.units.flatMap((entry) =>
    entry.forms.map(({ form, count }) => ({ unit: entry.about, form, count })),
  );

  it('counts every form of every unit within a tenth of a plain search behind numbers', () => {
    const off = forms.flatMap(({ form, count }) => {
      const searched = searchUnit(form, searchedText);
      const allowed = Math.max(2, Math.ceil(searched / 10));
      return Math.abs(searched - count) <= allowed ? [] : [`${form}: ${count}, searched ${searched}`];
    });
    expect(forms.length).toBeGreaterThan(30);
    expect(off).toEqual([]);
  });
});

const FIGURES = String.raw`[\d¼-¾⅐-⅞]\s?-?\s?`;
const WORDS = String.raw`\b(?:an?|one|two|three|four|five|six|seven|eight|ten|twelve|fifteen|half|quarter|few|couple(?: of)?|couple of|several|another)[\s-]`;
const BETWEEN = `(?:(?:of an? |heaping |heaped |large |small |full |level |more |good |whole |additional |generous |extra |dessert )?)`;

/** The form behind a number in figures, a name in full behind one in words too; in singular or plural. */
function searchUnit(form: string, texts: readonly string[]): number {
  const plain = form.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`).replace(/ /g, String.raw`[\s-]`);
  // What has a vowel in the middle is a word and may begin large; a short form is another with another capital.
  const isName = form.length > 2 && /[aeiou]/.test(form) && !/^(min|sec)\b/.test(form);
  const ending = endingOf(form, isName);
  // "180 c" is a temperature.
  const figures = /^[cCtT]$/.test(form) ? `(?<!\\d\\d)${FIGURES}` : FIGURES;
  const before = isName ? `(?:${FIGURES}|${WORDS})` : figures;
  const pattern = new RegExp(before + BETWEEN + plain + ending, isName ? 'giu' : 'gu');
  return texts.reduce((sum, text) => sum + [...text.matchAll(pattern)].length, 0);
}

/** A full stop inside a sentence belongs to the short form before it; at the end of one nobody can tell. */
function endingOf(form: string, isName: boolean): string {
  if (form.endsWith('.')) return String.raw`(?=\s*[a-z(,)])`;
  if (/[”"]$/.test(form)) return '';
  return String.raw`(?:e?s)?(?!\p{L})` + (isName ? '' : String.raw`(?!\.(?=\s*[a-z(,]))`);
}
