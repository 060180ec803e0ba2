/** Knows which Markdown is read: CommonMark with tables as GitHub writes them and YAML front matter. */
import type { Root } from 'mdast';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';

/** The parser alone, so that the benchmark can time it with the very same extensions. */
export const parser = unified().use(remarkParse).use(remarkFrontmatter).use(tables).freeze();

const withTables = unified().use(remarkParse).use(tables).freeze();
const withoutTables = unified().use(remarkParse).freeze();

/** The parser for a piece without front matter. Looking out for tables costs time, so it is done where one may be. */
export function parserFor(piece: string): { parse(text: string): Root } {
  return TABLE.test(piece) ? withTables : withoutTables;
}

/** Cells stand between bars; a table of one column may do without, but not without a colon beside its rule. */
const TABLE = /[|]|:-|-:/;

/** Extensions that plugins leave for remark-parse; it reads them under these two names. */
interface Extensions {
  micromarkExtensions?: unknown[];
  fromMarkdownExtensions?: unknown[];
}

/** Tables only: the whole of GFM would also turn bare addresses into links, whose text has no place in the source. */
function tables(this: Processor): undefined {
  const data = this.data() as Extensions;
  data.micromarkExtensions = [...(data.micromarkExtensions ?? []), gfmTable()];
  data.fromMarkdownExtensions = [...(data.fromMarkdownExtensions ?? []), gfmTableFromMarkdown()];
}
