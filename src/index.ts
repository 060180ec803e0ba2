/** The typed public interface: read texts in memory, and write the reading as a report. */
export { rules } from '../rules/index.js';
export type { Edit, Example, Finding, Mark, Mend, Related, Rule, Weight } from '../rules/rule.js';
export type { Component, Listing, Recipe, StatedTime, StatedYield, Step } from './anatomy/types.js';
export type { Amount, ListedFood, ListingLine, Measure, Yield } from './grammar/types.js';
export type { Book, Dish, Mention } from './kitchen/types.js';
export type { Place } from './manuscript/lines.js';
export type { Page, SourceFile, Span } from './manuscript/types.js';
export { type MendedFile, type Mending, mendManuscript } from './mending/mend.js';
export { readManuscript } from './reading/read.js';
export type { Reading, ReadingOptions } from './reading/types.js';
export { explainRule, listRules } from './reports/explain.js';
export { type GalleyOptions, galley } from './reports/galley.js';
export { json, reportReading } from './reports/json.js';
export { plain } from './reports/plain.js';
export { type ReadingReport, readingReport, type ShowReport, showReport } from './reports/schema.js';
export { reportShow, showJson } from './reports/show.js';
export { showText } from './reports/show-text.js';
export { version } from './version.js';
