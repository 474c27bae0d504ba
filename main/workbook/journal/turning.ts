import type BetterSqlite3 from 'better-sqlite3';
import type { Refusal } from '../../../shared/contract/refusal.ts';
import { ok, type Result, refuse } from '../../../shared/kernel/result.ts';
import type { JournalStep } from '../../../shared/model/journal.ts';
import type { Saving } from '../saving.ts';
import type { JournalSteps } from './journal-steps.ts';
import { stepToTurn, type Turn, turnStep } from './turn-step.ts';

interface Over {
  readonly db: BetterSqlite3.Database;
  readonly steps: JournalSteps;
  /** The present instant, ISO 8601 UTC. */
  readonly now: () => string;
}

/** Takes the last step back, or does it again; itself a step of the journal. */
export function turning({ db, steps, now }: Over, way: Turn): Saving<JournalStep> {
  let chosen: Result<JournalStep, Refusal> = refuse({ kind: 'nothing-to-undo' });
  const changedSince = () =>
    chosen.ok ? refuse({ kind: 'changed-since', way, words: chosen.value.words } as const) : chosen;
  return {
    work() {
      chosen = stepToTurn(steps, way);
      if (!chosen.ok) return chosen;
      if (!turnStep(db, chosen.value.id, way)) return changedSince();
      steps.write({ kind: way, ofStep: chosen.value.id, words: chosen.value.words }, now());
      return chosen;
    },
    step: null,
    contradicted: changedSince,
  };
}

/** Takes back every step that stands, the latest first, down to the one of the given number; all of them or none. */
export function turningBackTo(over: Over, oldest: number): Saving<readonly JournalStep[]> {
  const one = turning(over, 'undo');
  return {
    work(tables) {
      const turned: JournalStep[] = [];
      while ((over.steps.toUndo()?.id ?? Number.NEGATIVE_INFINITY) >= oldest) {
        const result = one.work(tables);
        if (!result.ok) return result;
        turned.push(result.value);
      }
      return turned.length > 0 ? ok(turned) : refuse({ kind: 'nothing-to-undo' });
    },
    step: null,
    contradicted: () => {
      const result = one.contradicted?.();
      return result?.ok === false ? result : refuse({ kind: 'nothing-to-undo' });
    },
  };
}
