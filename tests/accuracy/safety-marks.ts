/** Compares the marks of the safety rules on the corpus with the verdicts of a person, mark by mark. */
import type { SourceFile } from '../../src/manuscript/types.js';
import { readManuscript } from '../../src/reading/read.js';
import { type MarkScore, scoreMarks } from './marks.js';

/** The rules whose marks are judged. */
export const judgedRules: readonly string[] = [
  'color-cue-alone',
  'hand-washing-absent',
  'marinade-reused',
  'raw-poultry-rinsed',
  'raw-surface-reused',
  'rest-absent',
  'safe-temperature-absent',
  'safe-temperature-low',
];

export interface SafetyScore extends MarkScore {
  readonly medianNotes: number;
  readonly mostNotes: number;
}

export function scoreSafetyMarks(files: readonly SourceFile[]): SafetyScore {
  const notes = files
    .map((file) => readManuscript([file], { only: judgedRules }))
    .filter(({ dishes }) => dishes.some((dish) => dish.rawFoods.some((raw) => raw.safety !== 'egg')))
    .map(({ counts }) => counts.note)
    .sort((a, b) => a - b);
  return {
    ...scoreMarks(files, 'safety-marks.tsv', judgedRules),
    medianNotes: notes[Math.floor(notes.length / 2)] ?? 0,
    mostNotes: notes.at(-1) ?? 0,
  };
}
