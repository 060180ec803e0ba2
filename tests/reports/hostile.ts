/** A reading in which every text that an author can write, file names included, tries to become markup, script or reversed text. */
import type { Reading } from '../../src/reading/types.js';
import { mark, page, reading, spanOf } from './fake.js';

const attempts = [
  '<script>window.owned = "script"</script>',
  '<img src="nowhere" onerror="window.owned = \'image\'">',
  '" onmouseover="window.owned = \'attribute\'" x="',
  "' autofocus onfocus='window.owned = 1' x='",
  '</style></title></textarea></svg><script>window.owned = 2</script>',
  '<!-- <iframe srcdoc="<script>parent.owned = 3</script>"></iframe>',
  '<a href="javascript:window.owned = 4">here</a>',
  '&lt;b&gt; &#60;i&#62; `window.owned`',
  'Donaudampfschifffahrt'.repeat(15),
  '\u202Egnp.soup\u2066 \u200Fleft\u061C \u2028 \u0000 \uD800',
];
export const evil = attempts.join(' ');

export function hostileReading(): Reading {
  const odd = page(
    `"><script>window.owned = 5<\u202E/${evil.replaceAll('/', '|')}.md`,
    `# ${evil}\n\n- ${evil} flour\n`,
  );
  const other = page('</script><script>window.owned = 6</script>.md', `${evil}\n`);
  return reading(
    [
      mark(odd, evil, {
        recipe: evil,
        subject: evil,
        message: evil,
        advice: evil,
        related: [{ file: other.path, span: spanOf(other, evil), message: evil }],
        mends: [{ label: evil, sure: true, edits: [{ span: spanOf(odd, evil), text: evil }] }],
      }),
      mark(odd, 'flour', { recipe: evil }),
      mark(other, evil),
    ],
    { pages: [odd, other], dishes: [] },
  );
}
