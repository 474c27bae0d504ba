/** Setting that holds the day a demo or practice workbook is held at; no other workbook has it. */
export const HELD_AT = 'heldAt';
