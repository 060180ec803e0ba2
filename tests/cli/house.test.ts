/** Which house style the command line takes, and what it says of a wrong one. */
import { describe, expect, test } from 'vitest';
import { faulty, manuscript, tamis } from './run.js';

const args = ['read', '--as', 'plain', '--stop-at', 'never', '--only', 'unlisted-ingredient'];
const off = 'rules:\n  unlisted-ingredient: off\n';

describe('a house style', () => {
  test('is the nearest one upward of what is read', () => {
    const folder = manuscript({
      'house-style.yaml': off,
      'book/soups/leek.md': faulty,
      'other/house-style.yaml': 'system: metric\n',
      'other/leek.md': faulty,
    });
    expect(tamis(folder, [...args, 'book']).stdout).toBe('');
    expect(tamis(`${folder}/book`, [...args, 'soups/leek.md']).stdout).toBe('');
    expect(tamis(folder, [...args, 'other']).stdout).toMatch(/^leek\.md:15:/);
  });
  test('may be named', () => {
    const folder = manuscript({ 'leek.md': faulty, 'styles/strict.yaml': off });
    expect(tamis(folder, [...args, '--house', 'styles/strict.yaml']).stdout).toBe('');
    const missing = tamis(folder, [...args, '--house', 'strict.yaml']);
    expect(missing.status).toBe(2);
    expect(missing.stderr).toContain('strict.yaml: there is no such house style');
  });
  test('speaks of folders from where it stands', () => {
    const folder = manuscript({
      'house-style.yaml': 'folders:\n  soups/:\n    unlisted-ingredient: off\n',
      'soups/leek.md': faulty,
      'mains/leek.md': faulty,
    });
    expect(tamis(folder, args).stdout).toMatch(/^mains\/leek\.md:15:[^\n]*\n$/);
    expect(tamis(folder, [...args, 'soups']).stdout).toBe('');
    expect(tamis(`${folder}/soups`, args).stdout).toBe('');
  });
  test('that names a folder which is not there says so, and is read all the same', () => {
    const folder = manuscript({
      'house-style.yaml': 'matter: [frunt/]\nfolders:\n  soups/: { unlisted-ingredient: off }\n',
      'soups/leek.md': faulty,
    });
    expect(tamis(folder, args)).toMatchObject({
      stdout: '',
      status: 0,
      stderr: 'tamis: house-style.yaml:1: "matter" names "frunt/", and there is no such file or folder\n',
    });
  });
  test('that is wrong is told line by line, and nothing is read', () => {
    const folder = manuscript({ 'house-style.yaml': 'unts: 1\nsystem: metrik\n', 'leek.md': faulty });
    const run = tamis(folder, args);
    expect(run.status).toBe(2);
    expect(run.stdout).toBe('');
    expect(run.stderr).toMatch(
      /^tamis: house-style\.yaml:1: "unts".*"units"\ntamis: house-style\.yaml:2: .*"metric"\n$/,
    );
  });
  test('is one for all that is read', () => {
    const folder = manuscript({ 'a/house-style.yaml': off, 'a/leek.md': faulty, 'b/leek.md': faulty });
    const run = tamis(folder, [...args, 'a', 'b']);
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('--house');
    expect(tamis(folder, [...args, '--house', 'a/house-style.yaml', 'a', 'b'])).toMatchObject({
      stdout: '',
      status: 0,
    });
  });
});
