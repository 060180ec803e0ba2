/** What the rows of the larder are. The zod schema of each stands in schema.ts, and the types are made from it. */
export type {
  Food,
  FoodRow,
  LexiconWord,
  Limit,
  SafeTemperature,
  SafetyClass,
  Technique,
  Unit,
  UnitKind,
  Vessel,
} from './schema.js';
