import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { HiveMoves } from './HiveMoves.tsx';
import { HiveScores } from './HiveScores.tsx';
import { HiveTests } from './HiveTests.tsx';
import { HiveTreatments } from './HiveTreatments.tsx';

/** What was written down about a hive as stock: scores, tests, treatments, moves and its queens. */
export function HiveRecords({ colonyId }: { colonyId: string }) {
  const records = useAnswer(['hive-records', colonyId], () => ask.hives.getHiveRecords.query({ colonyId }));
  if (!records.data) return null;
  return (
    <div className="columns">
      <HiveScores colonyId={colonyId} records={records.data} />
      <HiveTests colonyId={colonyId} records={records.data} />
      <HiveTreatments colonyId={colonyId} records={records.data} />
      <HiveMoves colonyId={colonyId} records={records.data} />
    </div>
  );
}
