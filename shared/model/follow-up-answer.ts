/** `well`: as hoped. `not-yet`: another look is needed. `gone`: she is dead or lost. */
export const FOLLOW_UP_ANSWERS = ['well', 'not-yet', 'gone'] as const;
export type FollowUpAnswer = (typeof FOLLOW_UP_ANSWERS)[number];
