/** The shape of house-style.yaml, in zod: it is checked by this, and the JSON Schema for editors is made from it. */
import { z } from 'zod';
import { larder } from '../larder/load.js';
import { toleranceEdition } from '../larder/tolerances.js';
import {
  degreeForms,
  listingForms,
  numberForms,
  rangeForms,
  scaleOrders,
  titleForms,
  unitForms,
} from './house-style.js';

export type HouseStyleFile = z.infer<ReturnType<typeof houseStyleSchema>>;

/** The schema for a tool that has these rules. */
export function houseStyleSchema(rules: readonly string[]) {
  const rulings = z
    .strictObject(
      Object.fromEntries(rules.map((rule) => [rule, z.enum(['off', 'note', 'query', 'fault']).optional()])),
    )
    .meta({ id: 'rulings' });
  return z.strictObject({
    system: z
      .enum(['us-customary', 'us-legal', 'metric', 'imperial', 'australian'])
      .optional()
      .describe('whose cups, pints and tablespoons are meant'),
    hygiene: z
      .enum(['notes', 'full', 'off'])
      .optional()
      .describe(
        'how much is asked of kitchen hygiene: the worst, the full wording at every touch, or nothing',
      ),
    units: z
      .strictObject({
        form: z.enum(unitForms).optional().describe('of every unit that is not named here by itself'),
        ...Object.fromEntries(styledUnits.map((id) => [id, z.string().min(1).optional()])),
      })
      .optional()
      .describe('how units are written'),
    numbers: z
      .union([z.enum(numberForms), z.literal(0.5)])
      .optional()
      .describe('an example of a number that is not whole'),
    ranges: z.enum(rangeForms).optional().describe('an example of a range'),
    temperatures: z
      .strictObject({
        form: z.enum(degreeForms).optional().describe('an example'),
        order: z
          .enum(scaleOrders)
          .optional()
          .describe('which scale comes first, and how the other stands to it'),
      })
      .optional()
      .describe('how temperatures are written'),
    terms: names
      .optional()
      .describe('by the term that is wanted, the terms that are not: scallion: [green onion]'),
    spellings: names
      .optional()
      .describe('by the spelling that is wanted, those that are not: yogurt: [yoghurt]'),
    yields: z.string().regex(/\d/, 'it must be an example with a number, such as "Serves 4"').optional(),
    titles: z.enum(titleForms).optional().describe('the capitals of recipe titles'),
    listings: z.enum(listingForms).optional().describe('how a line of a list that opens with a word begins'),
    unlisted: z.array(z.string().min(1)).optional().describe('foods that need no listing: water, salt'),
    tolerances: z
      .literal(toleranceEdition)
      .optional()
      .describe(
        'the date of the tolerances by which amounts, temperatures and times are compared; a version that has others refuses to read',
      ),
    matter: z
      .array(z.string().min(1))
      .optional()
      .describe('files and folders of front and back matter, in which no recipe is sought'),
    rules: rulings.optional().describe('rules that are off, or weigh otherwise'),
    folders: z.record(z.string().min(1), rulings).optional().describe('the same for a folder or a file'),
  });
}

const names = z.record(z.string().min(1), z.array(z.string().min(1)));

/** Units whose form is a matter of style: those with a size. */
const styledUnits = larder.units
  .filter(({ kind }) => kind === 'volume' || kind === 'mass' || kind === 'length' || kind === 'time')
  .map(({ id }) => id);
