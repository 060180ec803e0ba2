/** Writes a reading as OASIS SARIF 2.1.0, for forges and for viewers of such logs. Paragraph signs below are the standard's. */
import { Chalk } from 'chalk';
import type { Edit, Mark, Rule, Weight } from '../../rules/rule.js';
import type { Span } from '../manuscript/types.js';
import { fingerprintsOf } from '../reading/fingerprints.js';
import type { Reading } from '../reading/types.js';
import { version } from '../version.js';
import { caution } from './caution.js';
import { explainRule } from './explain.js';
import { jsonText } from './json.js';
import { type Places, placesOf } from './places.js';

/** `ran` are the rules that were run; every mark is of one of them. */
export function sarif(reading: Reading, ran: readonly Rule[]): string {
  const log: Log = {
    places: placesOf(reading),
    ruleIndexes: new Map(ran.map((rule, index) => [rule.name, index])),
    fileIndexes: new Map(reading.pages.map((page, index) => [page.path, index])),
    fingerprints: fingerprintsOf(reading),
  };
  return jsonText({
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'tamis', version, semanticVersion: version, rules: ran.map(descriptor) } },
        columnKind: 'utf16CodeUnits',
        newlineSequences: ['\r\n', '\n', '\r'],
        artifacts: reading.pages.map((page) => ({
          location: artifactLocation(page.path, log),
          mimeType: 'text/markdown',
          roles: ['analysisTarget'],
        })),
        results: [
          ...reading.marks.map((mark) => ({ ...result(mark, log), suppressions: [] })),
          ...reading.stetted.map(({ mark, reason }) => ({
            ...result(mark, log),
            suppressions: [suppression(reason)],
          })),
        ],
        ...(reading.held === undefined ? {} : { properties: { held: reading.held.length } }),
      },
    ],
  });
}

/** What the places of a mark are looked up in. */
interface Log {
  readonly places: Places;
  readonly ruleIndexes: ReadonlyMap<string, number>;
  readonly fileIndexes: ReadonlyMap<string, number>;
  readonly fingerprints: ReadonlyMap<Mark, string>;
}

const levels: Readonly<Record<Weight, string>> = { fault: 'error', query: 'warning', note: 'note' };

/** Columns of a rule's help, which viewers show as it is. */
const helpColumns = 80;

function descriptor(rule: Rule) {
  return {
    id: rule.name,
    shortDescription: { text: rule.summary },
    fullDescription: { text: `${rule.summary} ${rule.why}` },
    help: {
      text: explainRule(rule, { color: new Chalk({ level: 0 }), width: helpColumns }),
      markdown: helpMarkdown(rule),
    },
    defaultConfiguration: { level: levels[rule.weight] },
    properties: { tags: [rule.topic] },
  };
}

function helpMarkdown(rule: Rule): string {
  const examples = rule.examples.map(({ title, text, marks }) => {
    const kind = marks.length === 0 ? 'Left alone' : 'Marked';
    return `**${kind}: ${title}**\n\n${text.trimEnd().replace(/^/gm, '    ')}`;
  });
  const sources = rule.sources.map((source) => `- ${source}`).join('\n');
  const cautions = rule.topic === 'safety' ? [caution] : [];
  return `${[rule.summary, rule.why, ...cautions, `Sources:\n\n${sources}`, ...examples].join('\n\n')}\n`;
}

function result(mark: Mark, log: Log) {
  return {
    ruleId: mark.rule,
    ruleIndex: log.ruleIndexes.get(mark.rule)!,
    level: levels[mark.weight],
    message: message(`${mark.message} ${mark.advice}`),
    locations: [
      {
        physicalLocation: physicalLocation(mark.file, mark.span, log),
        ...(mark.recipe === null ? {} : { logicalLocations: [{ name: mark.recipe, kind: 'recipe' }] }),
      },
    ],
    ...list(
      'relatedLocations',
      mark.related.map((related, index) => ({
        id: index + 1,
        physicalLocation: physicalLocation(related.file, related.span, log),
        message: message(related.message),
      })),
    ),
    ...list(
      'fixes',
      mark.mends.map(({ label, sure, edits }) => ({
        description: message(label),
        artifactChanges: [
          {
            artifactLocation: artifactLocation(mark.file, log),
            replacements: edits.map((edit) => replacement(mark.file, edit, log)),
          },
        ],
        properties: { sure },
      })),
    ),
    partialFingerprints: { 'passage/v1': log.fingerprints.get(mark)! },
  };
}

/** A list that has nothing in it is left out. */
function list<Key extends string, Item>(
  key: Key,
  items: readonly Item[],
): { [key in Key]?: readonly Item[] } {
  return items.length === 0 ? {} : ({ [key]: items } as { [key in Key]: readonly Item[] });
}

function suppression(reason: string) {
  return { kind: 'inSource', status: 'accepted', ...(reason === '' ? {} : { justification: reason }) };
}

function physicalLocation(file: string, span: Span, log: Log) {
  const snippet = log.places.words(file, span);
  return {
    artifactLocation: artifactLocation(file, log),
    region: { ...region(file, span, log), ...(snippet === '' ? {} : { snippet: { text: snippet } }) },
  };
}

/** Lines and columns only: offsets count Unicode characters in the standard (3.30.9), ours UTF-16 units. */
function region(file: string, span: Span, { places }: Log) {
  const { start, end } = places.ends(file, span);
  return { startLine: start.line, startColumn: start.column, endLine: end.line, endColumn: end.column };
}

function replacement(file: string, { span, text }: Edit, log: Log) {
  return { deletedRegion: region(file, span, log), insertedContent: { text } };
}

function artifactLocation(file: string, { fileIndexes }: Log) {
  const uri = file.split('/').map(encodeSegment).join('/');
  return { uri, uriBaseId: '%SRCROOT%', index: fileIndexes.get(file)! };
}

/** Half a surrogate pair, which some file names hold, has no place in a URI. */
function encodeSegment(name: string): string {
  return encodeURIComponent(name.replace(/\p{Cs}/gu, '\uFFFD'));
}

/** Braces stand for arguments in the standard (3.11.5), and brackets before parentheses for links (3.11.6); the author's are neither. */
function message(text: string): { text: string } {
  const literal = text.replace(/[{}]/g, '$&$&');
  return { text: literal.includes('](') ? literal.replace(/[[\]\\]/g, '\\$&') : literal };
}
