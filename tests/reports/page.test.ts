/** The query sheet as a browser takes it: filters, keyboard, answers, print, assistive technology, and a hostile manuscript. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import axe from 'axe-core';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.js';
import { readManuscript } from '../../src/reading/read.js';
import { groupMarks, numberOf } from '../../src/reports/groups.js';
import { html } from '../../src/reports/html.js';
import { chromiumPath } from './browser.js';
import { evil, hostileReading } from './hostile.js';

const executablePath = chromiumPath();
if (executablePath === null) {
  console.warn('Skipped: no Chromium was found on the PATH, so the query sheet was not tried in a browser.');
}

const draft = new URL('../../fixtures/lock-keepers-table/draft/', import.meta.url);
const demo = readManuscript(
  readdirSync(draft, { recursive: true, encoding: 'utf8' })
    // Three chapters have marks of each kind; more of them would only be more pages to print.
    .filter((file) => /^(bakes|mains|soups)\W.*\.md$/.test(file))
    .sort()
    .map((file) => ({ path: file, text: readFileSync(new URL(file, draft), 'utf8') })),
);

describe.skipIf(executablePath === null)('the query sheet in a browser', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'sheet-'));
  const files = { demo: path.join(folder, 'demo.html'), hostile: path.join(folder, 'hostile.html') };
  let browser: Browser;

  beforeAll(async () => {
    writeFileSync(files.demo, html(demo, rules));
    writeFileSync(files.hostile, html(hostileReading(), rules));
    // Chromium refuses its own sandbox to root, as which some build machines run.
    browser = await chromium.launch({ executablePath: executablePath!, args: ['--no-sandbox'] });
    // A machine that is busy with other tests is slow to start a browser.
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(name: keyof typeof files, options: BrowserContextOptions = {}) {
    const context = await browser.newContext({ viewport: { width: 1000, height: 800 }, ...options });
    const page = await context.newPage();
    const troubles: string[] = [];
    page.on('pageerror', (error) => troubles.push(String(error)));
    page.on('console', (message) => troubles.push(message.text()));
    page.on('request', (request) => {
      if (request.url() !== pathToFileURL(files[name]).href) troubles.push(`asked for ${request.url()}`);
    });
    await page.goto(pathToFileURL(files[name]).href);
    return { page, troubles, close: () => context.close() };
  }

  const shown = (page: Page) => page.locator('article:visible').count();

  test('shows every mark, loads nothing else and runs without trouble', async () => {
    const { page, troubles, close } = await open('demo');
    expect(await shown(page)).toBe(demo.marks.length);
    expect(await page.locator('#tools').isVisible()).toBe(true);
    expect(troubles).toEqual([]);
    await close();
  });
  test('filters by weight and by rule, and hides what has nothing left', async () => {
    const { page, close } = await open('demo');
    await page.locator('input[value="fault"]').uncheck();
    expect(await shown(page)).toBe(demo.counts.query + demo.counts.note);
    await page.locator('#rule').selectOption('scale-absent');
    const left = demo.marks.filter(({ rule, weight }) => rule === 'scale-absent' && weight !== 'fault');
    expect(left.length).toBeGreaterThan(0);
    expect(await shown(page)).toBe(left.length);
    expect(await page.locator('.recipe:visible').count()).toBe(
      new Set(left.map((mark) => `${mark.file} ${mark.recipe}`)).size,
    );
    expect(await page.locator('#shown').textContent()).toBe(
      `Showing ${left.length} of ${demo.marks.length} marks.`,
    );
    // A link of the summary to a recipe that is filtered away brings it back.
    const links = page.locator('.plot a[href^="#recipe-"]');
    const targets = await links.evaluateAll((all) => all.map((link) => link.getAttribute('href')!));
    const hidden = await Promise.all(targets.map((target) => page.locator(target).isHidden()));
    await links.nth(hidden.indexOf(true)).click();
    expect(await shown(page)).toBe(demo.marks.length);
    expect(await page.locator(targets[hidden.indexOf(true)]!).isVisible()).toBe(true);
    await close();
  });
  test('is read, filtered and answered with the keyboard alone', async () => {
    const { page, close } = await open('demo');
    const focused = () => page.evaluate('document.activeElement.id || document.activeElement.className');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('skip');
    await page.locator('input[value="fault"]').focus();
    await page.keyboard.press('Space');
    expect(await shown(page)).toBe(demo.marks.length - demo.counts.fault);
    await page.keyboard.press('Space');
    await page.locator('#rule').focus();
    await page.keyboard.type('yield');
    expect(await page.locator('#rule').inputValue()).toBe('yield-absent');
    await page.locator('.skip').focus();
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('queries');
    // The link to the rule, then the room for the answer.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('Makes 12.');
    expect(await page.locator('article:visible textarea').first().inputValue()).toBe('Makes 12.');
    await close();
  });
  // How surely the browser itself carries its store over to a new opening is not ours: busy, Chromium loses a few.
  test('gives what is typed to the browser to keep, and takes up what it has kept', async () => {
    const { page, close } = await open('demo');
    const area = page.locator('textarea').nth(2);
    const key = `tamis answer ${await area.getAttribute('data-fingerprint')}`;
    await area.fill('<b>Half a cup</b>');
    const kept = () => page.evaluate(`localStorage.getItem('${key}')`);
    expect(await kept()).toBe('<b>Half a cup</b>');
    await area.fill('');
    expect(await kept()).toBeNull();
    await page.context().addInitScript(`localStorage.setItem('${key}', 'As listed.')`);
    const later = await page.context().newPage();
    await later.goto(page.url());
    expect(await later.locator('textarea').nth(2).inputValue()).toBe('As listed.');
    expect(await later.locator('textarea').nth(1).inputValue()).toBe('');
    await close();
  });
  test('saves answers as a text, and asks before they are left unsaved', async () => {
    const { page, close } = await open('demo');
    const answer = '<b>Half a cup</b>\nas listed.';
    const asks = () =>
      page.evaluate(`{
        const event = new Event('beforeunload', { cancelable: true });
        window.dispatchEvent(event);
        event.defaultPrevented;
      }`);
    expect(await asks()).toBe(false);
    await page.locator('textarea').nth(2).fill(answer);
    expect(await asks()).toBe(true);
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('#save').click()]);
    const saved = readFileSync(await download.path(), 'utf8');
    expect(await asks()).toBe(false);
    expect(download.suggestedFilename()).toBe('answers.txt');
    expect(saved).toContain(answer);
    expect(saved).toContain(`Without an answer: ${demo.marks.length - 1}`);
    const asked = groupMarks(demo).flatMap(({ marks }) => marks.map((mark, index) => ({ mark, index })))[2]!;
    expect(saved).toContain(`(${asked.mark.file})\n\n`);
    expect(saved).toMatch(new RegExp(`\\n${numberOf(asked.index)}, line \\d+, ${asked.mark.rule}: "`));
    // The page itself holds it too, for a saved copy.
    expect(
      await page
        .locator('textarea')
        .nth(2)
        .evaluate((area) => area.textContent),
    ).toBe(answer);
    await close();
  });
  test('prints what is shown, with the whole answer and without the filters', async () => {
    const { page, close } = await open('demo');
    const pagesOn = async (format: string) =>
      (await page.pdf({ format })).toString('latin1').match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
    const whole = { A4: await pagesOn('A4'), Letter: await pagesOn('Letter') };
    await page.locator('#rule').selectOption('scale-absent');
    const area = page.locator('article:visible textarea').first();
    await area.fill('In Fahrenheit. '.repeat(60));
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('select:visible, button:visible, .skip:visible').count()).toBe(0);
    expect(await page.locator('#shown').isVisible()).toBe(true);
    expect(await area.isVisible()).toBe(false);
    expect(await page.locator('.answered .written:visible').first().textContent()).toContain(
      'In Fahrenheit.',
    );
    for (const format of ['A4', 'Letter'] as const) {
      const pages = await pagesOn(format);
      expect(pages).toBeGreaterThan(1);
      expect(pages).toBeLessThan(whole[format] / 2);
    }
    await close();
  });
  test('fits a telephone and a printed page without running over the side', async () => {
    for (const [name, width] of [
      ['demo', 320],
      ['demo', 640],
      ['hostile', 320],
    ] as const) {
      const { page, close } = await open(name, { viewport: { width, height: 800 } });
      const over = () =>
        page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth');
      expect(await over()).toBe(0);
      await page.emulateMedia({ media: 'print' });
      if (width === 640) expect(await over()).toBe(0);
      await close();
    }
  });
  test('is complete without scripts, only without filters', async () => {
    const { page, close } = await open('demo', { javaScriptEnabled: false });
    expect(await shown(page)).toBe(demo.marks.length);
    expect(await page.locator('#tools').isVisible()).toBe(false);
    expect(await page.locator('textarea:visible').count()).toBe(demo.marks.length);
    await close();
  });
  test.each(['light', 'dark'] as const)('has no violation that axe finds, %s', async (colorScheme) => {
    for (const name of ['demo', 'hostile'] as const) {
      const { page, close } = await open(name, { colorScheme });
      await page.evaluate(axe.source);
      const found = (await page.evaluate('axe.run()')) as axe.AxeResults;
      expect(found.violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
      expect(found.passes.length).toBeGreaterThan(20);
      await close();
    }
  });
  test('lets a hostile manuscript be nothing but text', async () => {
    const { page, troubles, close } = await open('hostile');
    for (const element of await page.locator('article, article *').all()) {
      await element.dispatchEvent('mouseover');
      await element.dispatchEvent('focus');
    }
    const facts = await page.evaluate(`({
      owned: typeof window.owned,
      scripts: document.scripts.length,
      strangers: document.querySelectorAll('img, iframe, a:not([href^="#"]), main style, main script').length,
      handlers: [...document.querySelectorAll('*')].flatMap((one) => [...one.attributes])
        .filter(({ name }) => name.startsWith('on') || name === 'autofocus').length,
      turned: /[\\u202A-\\u202E\\u2066-\\u2069\\u200F\\u061C]/.test(document.documentElement.textContent),
    })`);
    expect(facts).toEqual({ owned: 'undefined', scripts: 1, strangers: 0, handlers: 0, turned: false });
    expect(await page.locator('.message').first().textContent()).toContain(evil.split(' &lt;b&gt;')[0]);
    expect(troubles).toEqual([]);
    await close();
  });
  test('runs no script but its own, even one that got into the page', async () => {
    const { page, close } = await open('demo');
    await page.evaluate(`{
      const script = document.createElement('script');
      script.textContent = 'window.owned = 1';
      document.body.append(script);
      document.body.insertAdjacentHTML('beforeend', '<img src="data:," onerror="window.owned = 2">');
    }`);
    await page.waitForTimeout(100);
    expect(await page.evaluate('typeof window.owned')).toBe('undefined');
    await close();
  });
});
