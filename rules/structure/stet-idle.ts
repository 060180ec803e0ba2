/** Marks a stet that no longer silences anything. */
import type { StetRule } from '../rule.js';

export const stetIdle: StetRule = {
  scope: 'stets',
  name: 'stet-idle',
  topic: 'structure',
  weight: 'note',
  summary: 'A stet silences nothing: what it let stand is no longer there.',
  why: 'A stet that outlives its reason would hide the next fault in that place.',
  sources: ['Common practice: a query that has been answered is taken off the page'],
  examples: [
    {
      title: 'a stet beside a step that has been put right',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n- 1 tablespoon jam\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam. <!-- stet unlisted-ingredient: from the jar -->\n',
      marks: ['<!-- stet unlisted-ingredient: from the jar -->'],
    },
    {
      title: 'a stet for a whole recipe that has nothing to silence',
      text: '<!-- stet recipe unused-ingredient: as it comes -->\n# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n',
      marks: ['<!-- stet recipe unused-ingredient: as it comes -->'],
    },
    {
      title: 'a stet that silences a mark on its line',
      text: '# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam. <!-- stet unlisted-ingredient: from the jar -->\n',
      marks: [],
    },
    {
      title: 'a stet above the title that speaks for its recipe',
      text: '<!-- stet recipe unlisted-ingredient: whatever jar is open -->\n# Toast\n\nServes 1\n\n- 1 slice bread\n\n1. Toast the bread until golden, 2 minutes.\n2. Spread with the jam.\n',
      marks: [],
    },
  ],
  *look(stets) {
    for (const { page, stet, recipe, silenced, judged } of stets) {
      if (silenced > 0 || !judged) continue;
      yield {
        file: page.path,
        recipe,
        span: stet.span,
        subject: stet.rules.join(', ') || 'stet',
        message: 'This stet silences nothing.',
        advice: 'Take it out.',
        mends: [{ label: 'Take the stet out', sure: false, edits: [{ span: stet.span, text: '' }] }],
      };
    }
  },
};
