/** Runs with each test file. */
import { afterAll } from 'vitest';
import { clearManuscripts } from './cli/run.js';

afterAll(clearManuscripts);
