/** What the query sheet does where scripts run: it filters the queries, keeps the answers, and saves them as a text. */

/** Plain JavaScript of the page. It makes no element of any text, so no answer and no passage can become markup. */
export const script = `
'use strict';
(() => {
  const all = (selector, root = document) => [...root.querySelectorAll(selector)];
  const tools = document.getElementById('tools');
  if (tools === null) return;
  tools.hidden = false;

  const boxes = all('input[name="weight"]', tools);
  const rule = document.getElementById('rule');
  const shown = document.getElementById('shown');
  const queries = all('article');

  function filter() {
    const weights = new Set(boxes.filter((box) => box.checked).map((box) => box.value));
    let count = 0;
    for (const query of queries) {
      const fits = weights.has(query.dataset.weight) && (rule.value === '' || rule.value === query.dataset.rule);
      query.hidden = !fits;
      if (fits) count += 1;
    }
    for (const part of all('[data-part]')) part.hidden = part.querySelector('article:not([hidden])') === null;
    tools.classList.toggle('filtered', count < queries.length);
    shown.textContent = 'Showing ' + count + ' of ' + queries.length + ' marks.';
  }
  for (const box of boxes) box.addEventListener('change', filter);
  rule.addEventListener('change', filter);
  // A browser that comes back to the page may have kept the choices and not their effect.
  filter();

  // A link of the summary must lead somewhere, also when its place is filtered away.
  document.addEventListener('click', (event) => {
    const link = event.target.closest('a[href^="#"]');
    const place = link === null ? null : document.getElementById(link.getAttribute('href').slice(1));
    if (place === null || place.closest('[hidden]') === null) return;
    for (const box of boxes) box.checked = true;
    rule.value = '';
    filter();
  });

  const areas = all('textarea');
  const keyOf = (area) => 'tamis answer ' + area.dataset.fingerprint;

  // What is typed stands in the page itself too, so that a saved copy of the page holds it.
  function settle(area) {
    area.defaultValue = area.value;
    area.nextElementSibling.textContent = area.value + '\\n';
    area.parentElement.classList.toggle('answered', area.value.trim() !== '');
  }
  function store(area) {
    try {
      if (area.value === '') localStorage.removeItem(keyOf(area));
      else localStorage.setItem(keyOf(area), area.value);
      return true;
    } catch {
      return false;
    }
  }
  function stored(area) {
    try {
      return localStorage.getItem(keyOf(area));
    } catch {
      return null;
    }
  }
  // A busy browser may lose what it was given last, so it is asked before answers go that are in no file.
  let unsaved = false;
  window.addEventListener('beforeunload', (event) => {
    if (unsaved) event.preventDefault();
  });
  const kept = document.getElementById('kept');
  for (const area of areas) {
    area.value = stored(area) ?? area.value;
    settle(area);
    area.addEventListener('input', () => {
      unsaved = true;
      settle(area);
      const text = store(area)
        ? 'This browser keeps answers as you type where it can. Save them before you close the page.'
        : 'This browser does not keep answers: save them before you close the page.';
      if (kept.textContent !== text) kept.textContent = text;
    });
  }

  function answers() {
    const lines = ['Answers to the query sheet', ''];
    let open = 0;
    for (const recipe of all('.recipe')) {
      const own = all('article', recipe).filter((query) => query.querySelector('textarea').value.trim() !== '');
      open += all('article', recipe).length - own.length;
      if (own.length === 0) continue;
      lines.push(recipe.querySelector('h3').textContent + ' (' + recipe.dataset.file + ')', '');
      for (const query of own) {
        const head = query.querySelector('.number').textContent + ', ' + query.querySelector('.line').textContent;
        lines.push(head + ', ' + query.dataset.rule + ': "' + query.querySelector('mark').textContent + '"');
        lines.push(query.querySelector('textarea').value.trim(), '');
      }
    }
    lines.push('Without an answer: ' + open, '');
    return lines.join('\\n');
  }
  document.getElementById('save').addEventListener('click', () => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([answers()], { type: 'text/plain;charset=utf-8' }));
    link.download = 'answers.txt';
    link.click();
    unsaved = false;
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  });
  document.getElementById('print').addEventListener('click', () => print());
})();
`;
