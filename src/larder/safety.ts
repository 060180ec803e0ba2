/** The safe minimum internal temperature of each class of food. */
import { larder } from './load.js';
import type { SafeTemperature, SafetyClass } from './types.js';

const byClass = new Map<SafetyClass, SafeTemperature>(
  larder.safeTemperatures.map((row) => [row.safety, row]),
);

/** The chart's row for a class; throws when the table lacks it, since every class must have one. */
export function safeTemperature(safety: SafetyClass): SafeTemperature {
  const row = byClass.get(safety);
  if (row === undefined) throw new Error(`safeTemperature: no row for "${safety}" in safe-temperatures.yaml`);
  return row;
}
