import type { ClashList } from '../../shared/contract/clashes.ts';
import { useDays, useFirstWords } from './words.ts';

interface ClashLinesProps {
  readonly list: ClashList;
  /** The page of this batch: it is not linked to again. */
  readonly own?: string | null;
}

/** Each clash in a sentence with its dates and what would resolve it, and the way to its batches. */
export function ClashLines({ list, own = null }: ClashLinesProps) {
  const words = useFirstWords();
  const days = useDays();
  const nameOf = (id: string) => list.names[id] ?? words.clashes.thisBatch;
  const names = { batch: nameOf, hive: nameOf, box: nameOf, day: days.short };
  return (
    <ul className="clashes">
      {list.clashes.map((clash) => {
        const linked = clash.batchIds.filter((id) => id !== own && list.names[id]);
        return (
          <li key={JSON.stringify(clash)}>
            {words.sentences.clash(clash, names)}
            {linked.map((id) => (
              <span key={id}>
                {' '}
                <a className="nowrap" href={`#/batches/${id}`}>
                  {nameOf(id)}
                </a>
              </span>
            ))}
          </li>
        );
      })}
    </ul>
  );
}
