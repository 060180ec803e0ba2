/** Says counts in words, as the trade does: spelled out below one hundred, in figures from there on. */

/** "no notes", "one fault", "twelve queries". */
export function countOf(count: number, singular: string, plural: string): string {
  return `${inWords(count)} ${count === 1 ? singular : plural}`;
}

/** "one fault, no queries and two notes" from its parts. */
export function joined(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** The sentence with a capital letter first. */
export function capitalized(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

const small = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

function inWords(count: number): string {
  if (count >= 100) return String(count);
  if (count < 20) return small[count]!;
  const ten = tens[Math.floor(count / 10)]!;
  return count % 10 === 0 ? ten : `${ten}-${small[count % 10]}`;
}

/** Straight quotation marks as a printed page has them; left alone unless each of them clearly opens or closes, for an inch is written so too. */
export function curled(text: string): string {
  let opens = true;
  let clear = true;
  const put = text.replace(/"/g, (_, at: number) => {
    const fits = opens
      ? /(?:^|[\s([])$/.test(text.slice(0, at).slice(-1))
      : /^(?:$|[\s.,:;!?)\]])/.test(text.slice(at + 1));
    clear &&= fits;
    opens = !opens;
    return opens ? '\u201D' : '\u201C';
  });
  return clear && opens ? put : text;
}
