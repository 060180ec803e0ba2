/** Says, wherever the reports speak of food safety, whose word comes first. */

export const caution =
  'Temperatures follow the USDA chart of safe minimum internal temperatures. Local codes and licensed practice come first; no recipe is declared safe.';
