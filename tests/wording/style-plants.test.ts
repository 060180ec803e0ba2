/** Faults of style that are planted in real recipes are found; skipped where the corpus is missing. */
import { expect, it } from 'vitest';
import { corpusIn } from '../accuracy/plants.js';
import { countStylePlants } from '../accuracy/style-plants.js';

const files = corpusIn('../shared/corpus/public-domain');

it.skipIf(files === null)(
  'at least 95 % of planted faults of style are marked where they stand',
  { timeout: 120_000 },
  () => {
    const counts = [...countStylePlants(files!)];
    const planted = counts.reduce((sum, [, count]) => sum + count.planted, 0);
    const caught = counts.reduce((sum, [, count]) => sum + count.caught, 0);
    console.table(
      Object.fromEntries(
        counts.map(([kind, { planted, caught, missed }]) => [
          kind,
          { planted, caught, missed: missed.join(' ') },
        ]),
      ),
    );
    expect(planted).toBeGreaterThanOrEqual(60);
    expect(caught / planted).toBeGreaterThanOrEqual(0.95);
  },
);
