import { z } from 'zod';
import { LANGUAGES } from '../kernel/language.ts';
import { IsoDayField, NameField } from '../model/fields.ts';
import { LOOK_RESULTS, type LookResult } from '../model/look.ts';

/** A key the person may choose: one letter of any alphabet, or the dot. Digits stay with the number pad. */
const ResultLetterField = z
  .string()
  .trim()
  .toUpperCase()
  .regex(/^(?:\p{Lu}|\.)$/u);

/** The person's choices that belong to the workbook. One row each; unknown keys in a file are kept and ignored. */
export const Settings = z.object({
  theme: z.enum(['system', 'light', 'dark']),
  textSizePercent: z.int().min(90).max(160),
  density: z.enum(['comfortable', 'compact']),
  /** The computer's own, or one of those the program speaks. */
  language: z.enum(['system', ...LANGUAGES]),
  dateOrder: z.enum(['day-first', 'month-first', 'year-first']),
  weekStart: z.enum(['monday', 'saturday', 'sunday']),
  /** Degrees are kept in Celsius; this is how they are read and typed. */
  temperature: z.enum(['celsius', 'fahrenheit']),
  /** Feed is kept in litres and kilograms; this is how it is read and typed. */
  measures: z.enum(['metric', 'us']),
  /** Whether single letters do something on a page, outside the typing grids. */
  letterKeys: z.boolean(),
  /** Keys of the typing grid that the person changed. */
  resultLetters: z.partialRecord(z.enum(LOOK_RESULTS), ResultLetterField),
  /** Names of those who type in this workbook, and who types now; null = nobody is named. */
  people: z.array(NameField).max(20),
  writer: NameField.nullable(),
  /** Civil days on which the person is away, and weekdays (1 Monday to 7 Sunday) that suit. */
  awayDays: z.array(IsoDayField).max(2000),
  workWeekdays: z.array(z.int().min(1).max(7)).max(7),
  /** Cells one builder should finish at once before a notice appears. */
  cellsPerBuilder: z.int().min(1).max(200),
  builderRestDays: z.int().min(0).max(60),
  /** Share of that number a builder bears now: 100 in a flow, less in a dearth. */
  seasonFactorPercent: z.int().min(10).max(200),
  /** Day on which this season's first drone eggs were seen; null = not known, and nothing is said of drones. */
  firstDroneEggsOn: IsoDayField.nullable(),
});
export type Settings = z.infer<typeof Settings>;
export const SaveSettings = Settings.partial();

export type SettingsRefusal =
  | {
      readonly kind: 'result-key-twice';
      readonly field: 'resultLetters';
      readonly key: string;
      readonly results: readonly [LookResult, LookResult];
    }
  | { readonly kind: 'writer-not-listed'; readonly field: 'writer'; readonly name: string };
