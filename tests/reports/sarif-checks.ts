/** What SARIF 2.1.0 asks of a log beyond what its JSON Schema can say, and of ours where that schema is missing. Paragraph numbers are the standard's. */
import { z } from 'zod';

/** Everything that is wrong with the log of these texts; nothing for a good one. */
export function sarifTroubles(text: string, sources: ReadonlyMap<string, string>): string[] {
  const parsed = log.safeParse(JSON.parse(text));
  if (!parsed.success) return parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
  const [run] = parsed.data.runs;
  const troubles: string[] = [];
  const check = (holds: boolean, trouble: string): void => {
    if (!holds) troubles.push(trouble);
  };
  const { rules } = run.tool.driver;
  // 3.19.23: rule ids are unique.
  check(new Set(rules.map(({ id }) => id)).size === rules.length, 'a rule is described twice');
  const files = run.artifacts.map(({ location }) => decodeURIComponent(location.uri));
  check(
    files.join('\n') === [...sources.keys()].join('\n'),
    'the artifacts are not the files that were read',
  );
  const fingerprints = run.results.map((each) => each.partialFingerprints['passage/v1']);
  check(new Set(fingerprints).size === fingerprints.length, 'two results have one fingerprint');
  run.results.forEach((result, number) => {
    // 3.27.7: the index and the id name the same rule.
    check(rules[result.ruleIndex]?.id === result.ruleId, `result ${number}: the rule's index is not its own`);
    const places = [
      ...result.locations,
      ...(result.relatedLocations ?? []),
      ...(result.fixes ?? []).flatMap(({ artifactChanges }) =>
        artifactChanges.flatMap((change) =>
          change.replacements.map(({ deletedRegion }) => ({
            physicalLocation: { artifactLocation: change.artifactLocation, region: deletedRegion },
          })),
        ),
      ),
    ];
    for (const { physicalLocation } of places) {
      const { artifactLocation, region } = physicalLocation;
      // 3.4.5: the index leads to the artifact of the same URI.
      check(
        run.artifacts[artifactLocation.index]?.location.uri === artifactLocation.uri,
        `result ${number}: the artifact's index is not its own`,
      );
      const words = wordsAt(sources.get(decodeURIComponent(artifactLocation.uri)) ?? '', region);
      check(words !== null, `result ${number}: the region is not in the text`);
      // 3.30.13: a snippet is the region's own text.
      const { snippet } = region;
      check(
        snippet === undefined || snippet.text === words,
        `result ${number}: the snippet is not the region`,
      );
    }
  });
  return troubles;
}

/** The text of a region: lines and columns from 1, the end exclusive (3.30.5 to 3.30.8); null where there is none. */
function wordsAt(text: string, { startLine, startColumn, endLine, endColumn }: z.infer<typeof region>) {
  // 3.30.2: a byte-order mark is no character of the text.
  const bare = text.replace(/^\uFEFF/, '');
  const starts = [0];
  for (const { index, 0: end } of bare.matchAll(/\r\n|\n|\r/g)) starts.push(index + end.length);
  const start = (starts[startLine - 1] ?? Number.NaN) + startColumn - 1;
  const end = (starts[endLine - 1] ?? Number.NaN) + endColumn - 1;
  return start <= end && end <= bare.length ? bare.slice(start, end) : null;
}

const message = z.looseObject({
  // 3.11.5: braces stand for arguments unless doubled; none of our messages has an argument.
  text: z
    .string()
    .min(1)
    .refine((text) => !/[{}]/.test(text.replace(/\{\{|\}\}/g, ''))),
});
const region = z.looseObject({
  startLine: z.int().min(1),
  startColumn: z.int().min(1),
  endLine: z.int().min(1),
  endColumn: z.int().min(1),
  snippet: z.strictObject({ text: z.string() }).optional(),
});
// 3.10.1: a URI as RFC 3986 writes it; ours are relative, and do not begin with a slash.
const uri = z.string().regex(/^(?!\/)(?:[A-Za-z0-9._~!'()*/-]|%[0-9A-F]{2})+$/);
const artifactLocation = z.strictObject({
  uri,
  uriBaseId: z.literal('%SRCROOT%'),
  index: z.int().min(0),
});
const location = z.looseObject({ physicalLocation: z.strictObject({ artifactLocation, region }) });
const result = z.looseObject({
  ruleId: z.string(),
  ruleIndex: z.int().min(0),
  level: z.enum(['error', 'warning', 'note']),
  message,
  locations: z.array(location).length(1),
  relatedLocations: z.array(z.looseObject({ ...location.shape, message })).optional(),
  fixes: z
    .array(
      z.looseObject({
        description: message,
        artifactChanges: z.array(
          z.strictObject({
            artifactLocation,
            replacements: z
              .array(
                z.strictObject({
                  deletedRegion: region,
                  insertedContent: z.strictObject({ text: z.string() }),
                }),
              )
              .min(1),
          }),
        ),
      }),
    )
    .optional(),
  partialFingerprints: z.strictObject({ 'passage/v1': z.string().regex(/^[0-9a-f]{32}$/) }),
  // Where one result has it, all do: without it nothing is known about suppression (3.27.23).
  suppressions: z.array(
    z.strictObject({
      kind: z.literal('inSource'),
      status: z.literal('accepted'),
      justification: z.string().min(1).optional(),
    }),
  ),
});
const rule = z.looseObject({
  id: z.string(),
  shortDescription: message,
  fullDescription: message,
  help: z.strictObject({ text: z.string().min(1), markdown: z.string().min(1) }),
  defaultConfiguration: z.strictObject({ level: z.enum(['error', 'warning', 'note']) }),
});
const log = z.strictObject({
  $schema: z.url(),
  version: z.literal('2.1.0'),
  runs: z.tuple([
    z.looseObject({
      tool: z.strictObject({ driver: z.looseObject({ name: z.literal('tamis'), rules: z.array(rule) }) }),
      columnKind: z.literal('utf16CodeUnits'),
      artifacts: z.array(z.looseObject({ location: artifactLocation })),
      results: z.array(result),
    }),
  ]),
});
