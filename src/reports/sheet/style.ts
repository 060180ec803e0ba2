/** How the query sheet looks: a typed page under an editor's pencils, on screen by day and by night, and on A4 or Letter paper. */

/** Red pencil for faults, blue for queries, graphite for notes. Each is told by its word and its line as well as by its color. */
export const style = `
:root {
  --desk: #e9e2d2; --paper: #fffdf7; --ink: #26211b; --soft: #5d5447; --line: #cfc4ae; --tint: #f4eedf;
  --fault: #a01f1a; --query: #1d4c9c; --note: #5a5248; --focus: #7a3ea1;
}
@media screen and (prefers-color-scheme: dark) {
  :root {
    --desk: #17140f; --paper: #221e18; --ink: #ece4d5; --soft: #bdb09b; --line: #4d4538; --tint: #2c271f;
    --fault: #ff9d8e; --query: #9fc2ff; --note: #cbbfab; --focus: #d9a8ff;
  }
}
* { box-sizing: border-box; }
[hidden] { display: none !important; }
html { background: var(--desk); scroll-padding-top: 1rem; }
body {
  max-width: 54rem; margin: 1.5rem auto; padding: 2.5rem 3rem 3rem 2rem;
  color: var(--ink); background: var(--paper); box-shadow: 0 1px 5px rgb(0 0 0 / 25%);
  font: 1.0625rem/1.6 "Iowan Old Style", "Palatino Linotype", Palatino, "Book Antiqua", Georgia, serif;
  overflow-wrap: anywhere;
}
h1, h2, h3, h4 { font-weight: normal; line-height: 1.25; text-wrap: balance; }
h1 { margin: 0; font-size: 2.2rem; letter-spacing: 0.01em; }
h2 { margin: 3rem 0 1rem; padding-bottom: 0.3rem; border-bottom: 3px double var(--line); font-size: 1.5rem; font-style: italic; }
h3 { margin: 2.25rem 0 0; font-size: 1.3rem; font-weight: bold; }
p { margin: 0.5rem 0; }
a { color: inherit; text-decoration-color: var(--line); text-underline-offset: 0.2em; }
a:hover { text-decoration-color: currentcolor; }
:focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; border-radius: 2px; }
#queries:focus { outline: none; }
:target { background: var(--tint); }
.skip { position: absolute; left: -99rem; }
.skip:focus { left: 1rem; top: 1rem; padding: 0.5rem 1rem; color: var(--ink); background: var(--paper); }
.quiet, mark::before, mark::after { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.defs { position: absolute; }
.closing { font-size: 1.15rem; }
.caution { margin-top: 1rem; padding: 0.6rem 1rem; border: 1px solid var(--fault); border-left-width: 0.5rem; }
.file, .rest { margin: 0; color: var(--soft); font-size: 0.9rem; }

.legend { margin: 1rem 0; }
.legend div { display: flex; gap: 0.8rem; }
.legend dt { flex: 0 0 3.5rem; font-style: italic; font-weight: bold; }
.legend dd { margin: 0; }
.fault { --pencil: var(--fault); --stroke: solid; }
.query { --pencil: var(--query); --stroke: wavy; }
.note { --pencil: var(--note); --stroke: dotted; }
.legend dt { color: var(--pencil); text-decoration: underline var(--stroke) 2px; text-underline-offset: 0.25em; }

.plots { display: grid; grid-template-columns: repeat(auto-fit, minmax(19rem, 1fr)); gap: 1.5rem 2.5rem; margin-top: 1.5rem; }
.plot { width: 100%; table-layout: fixed; border-collapse: collapse; font-size: 0.9rem; line-height: 1.35; }
.plot caption { margin-bottom: 0.3rem; text-align: left; font-size: 1.05rem; font-style: italic; }
.plot th, .plot td { padding: 0.2rem 0; text-align: left; font-weight: normal; vertical-align: middle; }
.plot thead th { color: var(--soft); border-bottom: 1px solid var(--line); font-size: 0.8rem; }
.plot th:first-child { width: 58%; padding-right: 0.8rem; }
.plot .count { width: 3.2rem; text-align: right; font-variant-numeric: tabular-nums; }
.plot svg { display: block; }
.bar-fault { fill: var(--fault); }
.bar-query { fill: url(#hatch); stroke: var(--query); }
.bar-note { fill: var(--paper); stroke: var(--note); }
.hatch-ground { fill: var(--paper); }
.hatch-line { fill: var(--query); }
nav { margin-top: 1rem; }
nav ul { columns: 2 16rem; padding-left: 1.2rem; }

.tools { margin-top: 2rem; padding: 0.8rem 1.2rem; background: var(--tint); border: 1px solid var(--line); }
.tools fieldset { display: flex; flex-wrap: wrap; gap: 0.2rem 1.4rem; margin: 0; padding: 0; border: 0; }
.tools legend { float: left; padding: 0; margin-right: 1rem; }
.tools input { width: 1.1rem; height: 1.1rem; vertical-align: -0.15rem; accent-color: var(--query); }
select, button { min-height: 2rem; max-width: 100%; padding: 0.2rem 0.7rem; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: 2px; font: inherit; }
button { cursor: pointer; }
.kept { color: var(--soft); font-size: 0.9rem; }
.kept:empty { display: none; }

article { display: grid; grid-template-columns: 5.5rem 1fr; margin: 1.25rem 0 2rem; }
h4 { display: flex; flex-direction: column; align-items: center; gap: 0.25rem; margin: 0; padding-right: 1.2rem; font-size: 0.9rem; }
.number { display: grid; place-items: center; min-width: 2.8rem; height: 2.8rem; padding: 0 0.5rem; border: 2px solid var(--pencil); border-radius: 52% 48% 55% 45% / 48% 54% 46% 52%; color: var(--pencil); font-size: 1.1rem; font-style: italic; font-weight: bold; }
.weight { color: var(--pencil); font-style: italic; }
.line { color: var(--soft); white-space: nowrap; }
.asked { min-width: 0; padding-left: 1.3rem; border-left: 1px solid var(--pencil); }
blockquote { margin: 0 0 0.6rem; padding: 0.1rem 0; font: 1rem/2 "Courier Prime", "Courier New", Courier, monospace; }
mark { color: inherit; background: none; font-weight: bold; text-decoration: underline var(--stroke) var(--pencil) 2px; text-underline-offset: 0.3em; text-decoration-skip-ink: none; }
mark::before { content: " (marked: "; }
mark::after { content: ") "; }
mark.caret { display: inline-block; width: 0.9em; height: 0.6em; border: solid var(--pencil); border-width: 2px 0 0 2px; transform: rotate(45deg) scale(0.7); }
.message { color: var(--pencil); font-style: italic; font-size: 1.1rem; }
.compare { color: var(--soft); }
q { quotes: "“" "”"; }
.rule { margin: 0.2rem 0 0.6rem; color: var(--soft); font-size: 0.85rem; }
label { font-size: 0.95rem; }
.answer { display: grid; }
.answer > * { grid-area: 1 / 1; min-height: 6rem; padding: 0 0.5rem; border: 1px solid var(--line); font: inherit; line-height: 2rem; }
.answer textarea {
  width: 100%; resize: none; overflow: hidden; color: var(--ink);
  background: repeating-linear-gradient(transparent 0 calc(2rem - 1px), var(--line) calc(2rem - 1px) 2rem) var(--paper);
}
.written { visibility: hidden; white-space: pre-wrap; overflow-wrap: anywhere; }
.reasons dl > div { margin: 0.8rem -0.4rem; padding: 0.2rem 0.4rem; }
.reasons .times { margin-left: 0.6rem; color: var(--soft); font-size: 0.85rem; font-style: normal; font-weight: normal; }
.reasons dt { font-style: italic; font-weight: bold; }
.reasons dd { margin: 0; }
footer { margin-top: 3rem; color: var(--soft); font-size: 0.9rem; }

@media screen and (max-width: 40rem) {
  body { margin: 0; padding: 1.2rem 1rem; }
  article { display: block; }
  h4 { flex-direction: row; margin-bottom: 0.5rem; }
  .asked { padding-left: 0.8rem; }
}
@media print {
  :root { --paper: #fff; }
  @page { margin: 16mm 18mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: italic 9pt Georgia, serif; } }
  html, body { background: none; }
  body { max-width: none; margin: 0; padding: 0; box-shadow: none; font-size: 10.5pt; }
  h1 { font-size: 22pt; }
  h2 { margin-top: 1.6rem; }
  h3 { margin-top: 1.2rem; }
  h2, h3 { break-after: avoid; }
  /* As the head of a table its name stands again on each page that a recipe goes on to: a query is named by both. */
  .recipe { display: table; width: 100%; margin-top: 1.2rem; table-layout: fixed; }
  .recipe > h3 { display: table-header-group; break-inside: avoid; }
  .recipe > h3 bdi { display: block; padding-bottom: 0.9rem; }
  .recipe > .file { margin-top: -0.8rem; break-inside: avoid; }
  article { margin: 0.8rem 0 1.2rem; grid-template-columns: 4.6rem 1fr; }
  blockquote { line-height: 1.6; }
  p { margin: 0.2rem 0; }
  .rule { margin: 0 0 0.3rem; }
  .file { break-after: avoid; }
  .reasons dl > div { margin: 0.5rem 0; padding: 0; }
  article, .plot tr, .reasons dl > div { break-inside: avoid; }
  .skip, .tools > :not(#shown), .tools:not(.filtered), nav { display: none; }
  .tools { margin: 1rem 0 0; padding: 0; border: 0; background: none; }
  .plots { grid-template-columns: 1fr 1fr; }
  .bar-fault, .bar-query, .bar-note, .hatch-ground, .hatch-line { print-color-adjust: exact; }
  .answer { min-height: 5.1rem; border-bottom: 1px solid var(--line); }
  .answer::before, .answer::after { content: ""; grid-area: 1 / 1; height: 1.7rem; border-bottom: 1px solid var(--line); }
  .answer::after { height: 3.4rem; }
  .answer textarea, .written { display: none; }
  .answered::before, .answered::after { content: none; }
  .answered .written { display: block; visibility: visible; padding: 0; border: 0; }
  a { text-decoration: none; }
}
`;
