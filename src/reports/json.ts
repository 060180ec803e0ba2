/** Writes a reading as the json contract of schema.ts. */
import { rules } from '../../rules/index.js';
import type { Mark, Rule } from '../../rules/rule.js';
import { toleranceEdition } from '../larder/tolerances.js';
import { fingerprintsOf } from '../reading/fingerprints.js';
import type { Reading } from '../reading/types.js';
import { version } from '../version.js';
import { caution } from './caution.js';
import { type Places, placesOf, titleOf } from './places.js';
import type { ReadingReport } from './schema.js';
import { hasTopic } from './topics.js';

/** The report as text, indented by two. */
export function json(reading: Reading): string {
  return jsonText(reportReading(reading));
}

/** `ran` tells which rules are about food safety. */
export function reportReading(reading: Reading, ran: readonly Rule[] = rules): ReadingReport {
  const places = placesOf(reading);
  const fingerprints = fingerprintsOf(reading);
  return {
    tamis: version,
    recipes: reading.dishes.map(({ recipe }) => ({
      title: titleOf(recipe),
      file: recipe.file,
      line: places.place(recipe.file, recipe.title?.span().start ?? recipe.span.start).line,
    })),
    marks: reading.marks.map((mark) => reportMark(mark, places, fingerprints.get(mark)!)),
    counts: { fault: reading.counts.fault, query: reading.counts.query, note: reading.counts.note },
    stetted: reading.stetted.map(({ mark, reason, stet }) => ({
      rule: mark.rule,
      file: mark.file,
      line: places.place(mark.file, mark.span.start).line,
      recipe: mark.recipe,
      subject: mark.subject,
      reason,
      stet: { line: places.place(mark.file, stet.span.start).line, scope: stet.scope },
    })),
    held: reading.held?.length ?? null,
    caution: hasTopic(reading.marks, ran, 'safety') ? caution : null,
    style: reading.style.stated ? 'stated' : 'majority',
    tolerances: toleranceEdition,
  };
}

/** JSON leaves some controls of the author's text as they are; escaped, they mean the same and no terminal obeys them. */
export function jsonText(value: unknown): string {
  const text = JSON.stringify(value, null, 2);
  return `${text.replace(/[\u007F-\u009F\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069]/gu, escaped)}\n`;
}

function reportMark(mark: Mark, places: Places, fingerprint: string): ReadingReport['marks'][number] {
  return {
    rule: mark.rule,
    weight: mark.weight,
    file: mark.file,
    recipe: mark.recipe,
    subject: mark.subject,
    message: `${mark.message} ${mark.advice}`,
    ...places.ends(mark.file, mark.span),
    related: mark.related.map(({ file, span, message }) => ({ file, ...places.ends(file, span), message })),
    mends: mark.mends.map(({ label, sure, edits }) => ({
      label,
      sure,
      edits: edits.map(({ span, text }) => ({ ...places.ends(mark.file, span), text })),
    })),
    fingerprint,
  };
}

function escaped(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
}
