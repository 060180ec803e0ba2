/** Finds the recipe of a book that holds a place of one of its pages. */
import type { Page, Span } from '../manuscript/types.js';
import type { Book, Dish } from './types.js';

export function dishAt(book: Book, page: Page, { start, end }: Span): Dish | null {
  return (
    book.dishes.find(
      ({ page: own, recipe: { span } }) => own === page && span.start <= start && end <= span.end,
    ) ?? null
  );
}
