/** Prints every dual measure of the corpus with tamis's verdict, and a person's where it differs. */
import { labelledDuals } from './duals.js';
import { corpusIn } from './plants.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) console.log(`duals: the corpus is missing at ${folder}`);
else {
  const duals = labelledDuals(files);
  for (const { file, line, place, text, verdict, label } of duals) {
    const other = label === verdict ? '' : `   (label: ${label ?? 'none'})`;
    console.log(`${verdict.padEnd(9)} ${file}:${line}:${place}  ${text}${other}`);
  }
  const count = (verdict: string) => duals.filter((dual) => dual.verdict === verdict).length;
  const differ = duals.filter((dual) => dual.label !== 'either' && dual.label !== dual.verdict).length;
  console.log(
    `${duals.length} duals: ${count('right')} right, ${count('wrong')} wrong, ${count('unjudged')} not judged; ${differ} differ from the label`,
  );
}
