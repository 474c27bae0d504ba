import { DRONES, droneColoniesFor } from '../../../shared/biology/drones.ts';
import type { TimetableView } from '../../../shared/contract/timetable.ts';
import { useDays, useWords } from '../../components/words.ts';

interface DroneLinesProps {
  readonly drones: TimetableView['drones'];
  /** Queens that may fly; null = not known. */
  readonly queens: number | null;
}

/** By when drones must be begun for the mating flights of a batch, and in how many colonies by both rules. */
export function DroneLines({ drones, queens }: DroneLinesProps) {
  const { batches: words, sources } = useWords();
  const days = useDays();
  const colonies = queens === null || queens === 0 ? null : droneColoniesFor(queens);
  return (
    <>
      {drones.matureFrom !== null && drones.matureFrom <= drones.fliesFrom
        ? words.drones.ready(days.short(drones.fliesFrom), days.short(drones.matureFrom))
        : words.drones.begun(
            days.short(drones.fliesFrom),
            days.short(drones.layLatest),
            days.short(drones.combInAdvised),
          )}{' '}
      {colonies && queens ? words.drones.colonies(queens, colonies.perQueens, colonies.perBoxes) : ''}{' '}
      <span className="small">
        {words.one.source}: {sources.told(DRONES.eggToMature.source)}
      </span>
    </>
  );
}
