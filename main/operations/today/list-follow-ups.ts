import type { FollowUpLine } from '../../../shared/contract/follow-ups.ts';
import { addDays } from '../../../shared/kernel/day.ts';
import { openFollowUps } from '../follow-up-lines.ts';
import type { Desk } from '../operation.ts';

/** Checks of queens and boxes that are due by tomorrow, the oldest first. */
export const listFollowUps = ({ workbook: { tables }, today }: Desk): readonly FollowUpLine[] =>
  openFollowUps(tables, addDays(today, 1), today);
