/** Setting that holds the day a demo or practice workbook is held at; no other workbook has it. */
export const HELD_AT = 'heldAt';

/** Setting that holds who is typing. */
export const WRITER = 'writer';

/** Setting that holds the papers that went to the printer. */
export const PRINTED_PAPERS = 'printedPapers';
