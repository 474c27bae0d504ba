import { INTRODUCTION_CHECKS, RELEASE_DAYS } from '../../../shared/biology/introduction.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';
import type { FollowUpKind } from '../../../shared/model/follow-up.ts';
import type { IntroductionWay } from '../../../shared/model/queen-story.ts';

export interface DatedCheck {
  readonly what: FollowUpKind;
  readonly dueOn: Day;
  readonly latestOn: Day;
}

/**
 * The checks that follow when a queen is brought to a hive: her cage, where she has one; eggs; and whether she stayed.
 * The look for eggs waits until a few days after the last look at the cage.
 */
export function introductionChecks(way: IntroductionWay | null, on: Day): readonly DatedCheck[] {
  const { eggs, stayed, quietAfterRelease } = INTRODUCTION_CHECKS;
  const cage = way === null ? null : RELEASE_DAYS[way];
  const eggsAfter = Math.max(eggs.value, cage === null ? 0 : cage.range[1] + quietAfterRelease.value);
  const check = (what: FollowUpKind, due: number, latest: number): DatedCheck => ({
    what,
    dueOn: addDays(on, due),
    latestOn: addDays(on, latest),
  });
  return [
    ...(cage ? [check('check-release', cage.value, cage.range[1])] : []),
    check('check-eggs', eggsAfter, eggsAfter + eggs.range[1] - eggs.value),
    check('check-queen', stayed.value, stayed.range[1]),
  ];
}

/** The same check once more, after one that gave no clear answer. */
export function checkAgain(what: FollowUpKind, on: Day): DatedCheck {
  const { value, range } = INTRODUCTION_CHECKS.again;
  const days = what === 'check-release' ? range[0] : value;
  return { what, dueOn: addDays(on, days), latestOn: addDays(on, days + 1) };
}
