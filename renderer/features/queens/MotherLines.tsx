import type { ReactNode } from 'react';
import type { MotherLineNode } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { Section } from '../../components/Section.tsx';
import { useDays, useWords } from '../../components/words.ts';
import { YearColourMark } from '../../components/YearColourMark.tsx';
import { MotherLink } from './QueenTable.tsx';

/** The family tree as a list that is indented by generation, so that it reads as well aloud as by eye. */
export function MotherLines({ choice }: { choice: ReactNode }) {
  const { queens: words } = useWords();
  const lines = useAnswer(['mother-lines'], () => ask.queens.listMotherLines.query());
  return (
    <Section title={words.tree} acts={choice}>
      <p className="soft" style={{ marginBottom: 10 }}>
        {words.treeLead}
      </p>
      <ul className="tree">
        {(lines.data ?? []).map((node) => (
          <Branch key={node.ref.id} node={node} />
        ))}
      </ul>
    </Section>
  );
}

function Branch({ node }: { node: MotherLineNode }) {
  return (
    <li>
      <div className="tree-line">{node.queen ? <QueenText node={node} /> : <HiveText node={node} />}</div>
      {node.daughters.length > 0 ? (
        <ul>
          {node.daughters.map((daughter) => (
            <Branch key={daughter.ref.id} node={daughter} />
          ))}
        </ul>
      ) : null}
    </li>
  );
}

function HiveText({ node: { ref, daughters } }: { node: MotherLineNode }) {
  const { queens: words } = useWords();
  return (
    <>
      <MotherLink mother={ref} />{' '}
      <span className="soft small">{[words.unnumbered(ref.name), words.daughters(daughters.length)].join(' · ')}</span>
    </>
  );
}

function QueenText({ node: { ref, queen: line, daughters } }: { node: MotherLineNode }) {
  const { queens: words } = useWords();
  const days = useDays();
  if (!line) return null;
  const { queen } = line;
  const where = [words.places[queen.place], line.box ?? line.hive ?? queen.goneTo].filter(Boolean).join(': ');
  const more = [
    queen.motherLine,
    line.batch,
    queen.provedOn ? words.provedOn(days.dated(queen.provedOn)) : words.notProved,
    where,
    daughters.length > 0 ? words.daughters(daughters.length) : null,
  ];
  return (
    <>
      <strong>
        <MotherLink mother={ref} />
      </strong>{' '}
      <YearColourMark colour={line.yearColour} /> <span className="soft small">{more.filter(Boolean).join(' · ')}</span>
    </>
  );
}
