/** Reads a table of ingredients: which of its columns hold the amounts and the foods, and which rows are headings or sums. */
import { headingKind, labelOf } from '../larder/headings.js';
import { fold } from '../larder/names.js';
import { techniqueOf } from '../larder/techniques.js';
import { Passage } from '../manuscript/passage.js';
import type { Table } from '../manuscript/types.js';
import { startsWithAmount } from './language.js';

export type ColumnKind = 'food' | 'amount' | 'method' | 'other';

/** What the words over a column say that it holds. */
export function columnKind(text: string): ColumnKind {
  const kind = headingKind(text);
  const label = kind === null ? labelOf(text) : null;
  if (kind === 'list' || label?.is === 'list') return 'food';
  if (kind === 'amounts' || kind === 'alternative' || kind === 'yield') return 'amount';
  if (label?.is === 'method' && !label.open) return 'method';
  return kind === 'method' && !PREPARED.test(text) ? 'method' : 'other';
}

/** The column that says how a food is prepared is headed by a word that elsewhere heads the method. */
const PREPARED = /^\W*prep/i;

/** A row of the table as one line, or as the heading of the rows below it; `sum` is a row that adds up the others. */
export interface TableRow {
  readonly is: 'line' | 'head' | 'sum';
  readonly passage: Passage;
}

export function rowsOf(table: Table): TableRow[] {
  const [header = [], ...body] = table.rows;
  // The first row is a listing only where it is one of amounts, as in a table that was written without a header.
  const columns = columnsOf(header, body);
  const told = header.some((cell) => columnKind(cell.text) !== 'other');
  const rows = !told && header.some((cell) => startsWithAmount(cell.text)) ? [header, ...body] : body;
  const foodFirst = columns.indexOf('food') === 0 && columns.length > 1;
  return rows.flatMap((row) => rowOf(row, columns, foodFirst) ?? []);
}

type Column = ColumnKind | 'left';

/** The header tells; where it does not, the first column of figures holds the amounts, and other figures are left. */
function columnsOf(header: readonly Passage[], body: readonly (readonly Passage[])[]): Column[] {
  const kinds: Column[] = header.map((cell) => columnKind(cell.text));
  const told = kinds.includes('amount');
  let counted = told;
  for (const [index, cell] of header.entries()) {
    if (kinds[index] !== 'other') continue;
    const filled = body.flatMap((row) => row[index]?.text.trim() || []);
    const figures = filled.filter((text) => startsWithAmount(text)).length;
    if (figures * 2 <= filled.length) {
      if (kinds.includes('food') && !saysPreparation(cell.text)) kinds[index] = 'left';
      continue;
    }
    // Without a header all figures are read; a share in percent is no amount.
    const share = /%/.test(cell.text) || filled.some((text) => text.endsWith('%'));
    kinds[index] = share || (counted && cell.text.trim() !== '') ? 'left' : 'amount';
    counted = true;
  }
  return kinds;
}

/** "Prep", "State", "Chopped": words about the food; a blank header may stand over them too. */
function saysPreparation(header: string): boolean {
  const key = fold(header.trim());
  return key === '' || PREPARED.test(key) || headingKind(header) === 'notes' || techniqueOf(key) !== null;
}

function rowOf(row: readonly Passage[], columns: readonly Column[], foodFirst: boolean): TableRow | null {
  const cells = row.map((cell) => cell.trim());
  const filled = cells.flatMap((cell, index) => (cell.text === '' ? [] : [index]));
  const first = filled[0];
  if (first === undefined) return null;
  const words = filled.find((index) => !startsWithAmount(cells[index]!.text));
  if (words !== undefined && headingKind(cells[words]!.text.replace(/[\s:]+$/, '')) === 'amounts')
    return {
      is: 'sum',
      passage: Passage.join(
        filled.map((index) => cells[index]!),
        ' ',
      ),
    };
  if (filled.length === 1 && row.length > 1 && words !== undefined) {
    // Words where the amounts should be head what is below them; a food alone in its own column may lack an amount.
    const heads = first === 0 && !foodFirst;
    return { is: heads ? 'head' : 'line', passage: cells[first]! };
  }
  return { is: 'line', passage: lineOf(cells, columns) };
}

/** One line of a row: amounts side by side say the same, a unit goes with its figure, and a comma keeps a food from an amount after it. */
function lineOf(cells: readonly Passage[], columns: readonly Column[]): Passage {
  const parts: Passage[] = [];
  const amounts: Passage[] = [];
  const flush = (): void => {
    if (amounts.length > 0) parts.push(Passage.join(amounts.splice(0), ' / '));
  };
  for (const [index, cell] of cells.entries()) {
    if (cell.text === '' || columns[index] === 'left') continue;
    const column = columns[index] ?? 'other';
    if (startsWithAmount(cell.text)) amounts.push(cell);
    else if (column === 'amount' && amounts.length > 0)
      amounts.push(Passage.join([amounts.pop()!, cell], ' '));
    else {
      flush();
      parts.push(cell);
    }
  }
  flush();
  if (parts.length < 2) return parts[0] ?? cells[0]!;
  const [lead, ...rest] = parts;
  if (!startsWithAmount(lead!.text)) return Passage.join(parts, ', ');
  const [food, ...after] = rest;
  return Passage.join([Passage.join([lead!, food!], ' '), ...after], ', ');
}
