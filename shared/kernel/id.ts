/** A record's name for life: made once, by whoever creates the record, never reused. A UUID in the workbook. */
export type Id = string;
