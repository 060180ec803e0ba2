/** Takes the texts out of blocks, in their order: headings, paragraphs, items and cells. */
import type { Passage } from './passage.js';
import type { Block } from './types.js';

export function passagesOf(blocks: readonly Block[]): Passage[] {
  return blocks.flatMap((block) => {
    switch (block.type) {
      case 'heading':
      case 'paragraph':
        return [block.passage];
      case 'list':
        return block.items.flatMap((item) => passagesOf(item.blocks));
      case 'table':
        return block.rows.flat();
      case 'quote':
        return passagesOf(block.blocks);
      default:
        return [];
    }
  });
}
