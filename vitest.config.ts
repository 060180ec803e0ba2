import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
    // Reading the tables takes longer than most test files do, so a process keeps what it has imported for the next file.
    isolate: false,
    // Many tests wait for a process of their own meanwhile.
    maxWorkers: '100%',
  },
});
