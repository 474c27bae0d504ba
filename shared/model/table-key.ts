/** The tables that go out as sheets, each for a question a person asks of a season. */
export const TABLE_KEYS = [
  'hives',
  'batches',
  'counts',
  'steps-done',
  'sightings',
  'boxes',
  'placements',
  'looks',
  'queens',
  'queen-moves',
  'queen-feedback',
  'tallies',
  'hive-looks',
  'hive-moves',
  'feedings',
  'treatments',
  'hive-scores',
  'hive-tests',
  'weather',
  'wishes',
] as const;
export type TableKey = (typeof TABLE_KEYS)[number];
