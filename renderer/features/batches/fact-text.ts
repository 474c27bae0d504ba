import type { BatchDetail } from '../../../shared/contract/batches.ts';
import type { CalendarFactView } from '../../../shared/contract/timetable.ts';
import { useDays, useSentences, useWords } from '../../components/words.ts';

/** A fact that a forecast rests on, as a clause with its day. */
export function useFactText(batch: BatchDetail): (fact: CalendarFactView) => string {
  const words = useWords();
  const days = useDays();
  const say = useSentences();
  const { one } = words.batches;
  return (fact) => {
    const on = days.short(fact.on);
    if (fact.kind === 'step') return one.factStep(say.step(fact.step, batch.method, batch.builderType), on);
    if (fact.kind === 'larva-age') return one.factAge(fact.fromHours, fact.toHours, on);
    return one.factSeen(words.sightings[fact.what].name, on);
  };
}
