/** Prints every dual measure of the corpus with tamis's verdict. */
import { listDuals } from './duals.js';
import { corpusIn } from './plants.js';

const folder = '../shared/corpus/public-domain';
const files = corpusIn(folder);

if (files === null) console.log(`duals: the corpus is missing at ${folder}`);
else
  for (const { file, line, text, verdict } of listDuals(files))
    console.log(`${verdict.padEnd(9)} ${file}:${line}  ${text}`);
