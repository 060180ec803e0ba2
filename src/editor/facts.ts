/** Writes facts for a hover, as Markdown or as plain text; nothing of the author's text can become markup in it. */
import { type Hover, MarkupKind, type Range } from 'vscode-languageserver';
import type { Client } from './client.js';

/** What is told, and how it is called. */
export type Fact = readonly [label: string, value: string];

export function hoverOf({ markdown }: Client, title: string, facts: readonly Fact[], range: Range): Hover {
  const value = markdown
    ? [`**${escaped(title)}**`, '', ...facts.map(([label, said]) => `- ${label}: ${escaped(said)}`)].join(
        '\n',
      )
    : [oneLine(title), ...facts.map(([label, said]) => `${label}: ${oneLine(said)}`)].join('\n');
  return { contents: { kind: markdown ? MarkupKind.Markdown : MarkupKind.PlainText, value }, range };
}

/** CommonMark: a backslash before any ASCII punctuation makes it a plain character. */
function escaped(text: string): string {
  return oneLine(text).replace(/[!-/:-@[-`{-~]/g, '\\$&');
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
