/** Prints how tamis judges the dual measures of the corpus beside a person; every one of them when asked for each. */
import type { SourceFile } from '../../src/manuscript/types.js';
import { labelledDuals } from './duals.js';
import type { Shown } from './table.js';

export function printMeasures(files: readonly SourceFile[], { each, missed }: Shown): void {
  const duals = labelledDuals(files);
  const differs = ({ label, verdict }: (typeof duals)[number]): boolean =>
    label !== 'either' && label !== verdict;
  for (const dual of duals) {
    if (!each && !(missed && differs(dual))) continue;
    const { file, line, place, text, verdict, label } = dual;
    const other = label === verdict ? '' : `   (label: ${label ?? 'none'})`;
    console.log(`${verdict.padEnd(9)} ${file}:${line}:${place}  ${text}${other}`);
  }
  const count = (verdict: string) => duals.filter((dual) => dual.verdict === verdict).length;
  console.log(
    `${duals.length} duals: ${count('right')} right, ${count('wrong')} wrong, ${count('unjudged')} not judged; ${duals.filter(differs).length} differ from the label`,
  );
}
