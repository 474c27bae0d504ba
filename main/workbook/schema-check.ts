import type Database from 'better-sqlite3';

/**
 * Every table and column the migrations come to, so that an opening need not carry them all out to know. Held against
 * them by test/main/workbook/schema-check.test.ts.
 */
export const WHOLE_SCHEMA: Readonly<Record<string, string>> = {
  bar: 'id batch_id number',
  batch:
    'id code season method method_copy_id comb builder_type breeder_id builder_id anchor_step anchor_on larva_age_from_hours larva_age_to_hours cells_planned practice note lesson closed_on sealed_celsius',
  batch_tally: 'batch_id given taken entered_sealing sealed placed emergence_known emerged mating_known proved laying',
  box_look: 'id box_id placement_id looked_on result strength food note',
  calendar_export: 'id batch_id sequence from_on to_on summary location category alarm cancelled exported_on',
  colony: 'id code name yard_id place mother_line note ended_on',
  colony_move: 'id colony_id moved_on from_yard_id to_yard_id place paper note',
  colony_role: 'id colony_id season role',
  count: 'id batch_id bar_id stage cells counted_on',
  feeding: 'id colony_id box_id fed_on feed own_feed litres kilograms note',
  follow_up: 'id what due_on latest_on queen_id box_id colony_id done_on answer note',
  hive_look: 'id colony_id looked_on strength food note',
  journal_change: 'id step_id table_name row_id place old new batch_id box_id colony_id queen_id',
  journal_step: 'id at kind of_step words typed_by',
  label_print: 'id placement_id printed_on words',
  loss: 'id batch_id stage reason cells',
  mating_box: 'id code yard_id row walk_order box_type note retired_on',
  method_copy: 'id origin name changes',
  observation: 'id batch_id what seen_on from_hours to_hours note',
  placement: 'id box_id batch_id bar_id placed_on ended_on end_reason',
  queen:
    'id number born_in placement_id batch_id breeder_id mother_line marked_on first_eggs_on proved_on place box_id colony_id gone_to note mother_id',
  queen_feedback: 'id queen_id told_on told_by outcome note',
  queen_move: 'id queen_id moved_on place colony_id gone_to way price note',
  queen_promise: 'id queen_id promised_on promised_to wanted_on note',
  setting: 'key value',
  step_done: 'id batch_id step done_on note',
  step_drop: 'id batch_id step dropped_on reason',
  step_move: 'id batch_id step moved_to reason',
  stock_score: 'id colony_id trait scored_on score note',
  stock_test: 'id colony_id kind tested_on counted out_of hours note',
  treatment: 'id colony_id from_on to_on product amount reason paper note',
  weather_day: 'id day max_celsius wind_kmh rain flying_hours',
  wish: 'id for_whom queens wanted_on settled_on note',
  yard: 'id name note',
};

/** False when a table or column that every workbook has is missing. Whatever someone has added does no harm. */
export function hasWholeSchema(db: Database.Database): boolean {
  const there = new Set(columnNames(db));
  return Object.entries(WHOLE_SCHEMA).every(([table, columns]) =>
    columns.split(' ').every((column) => there.has(`${table}.${column}`)),
  );
}

function columnNames(db: Database.Database): readonly string[] {
  return db
    .prepare<[], string>(
      `SELECT t.name || '.' || c.name FROM pragma_table_list AS t JOIN pragma_table_info(t.name) AS c
       WHERE t.schema = 'main' AND t.type = 'table'`,
    )
    .pluck()
    .all();
}
