/** The limits of time and heat that published advice sets. */
import { larder } from './load.js';

const byName = new Map(larder.hazardLimits.map((row) => [row.limit, row]));
const SECONDS = { minutes: 60, hours: 3600, days: 86_400 } as const;

/** A limit of time in seconds; throws when the table has no such row, which is a slip of the pen. */
export function limitSeconds(limit: string): number {
  const row = byName.get(limit);
  for (const unit of ['minutes', 'hours', 'days'] as const) {
    const count = row?.[unit];
    if (count !== undefined) return count * SECONDS[unit];
  }
  throw new Error(`limitSeconds: no time for "${limit}" in hazard-limits.yaml`);
}

/** A limit of heat in degrees Fahrenheit; throws when the table has no such row. */
export function limitFahrenheit(limit: string): number {
  const fahrenheit = byName.get(limit)?.fahrenheit;
  if (fahrenheit === undefined)
    throw new Error(`limitFahrenheit: no heat for "${limit}" in hazard-limits.yaml`);
  return fahrenheit;
}
