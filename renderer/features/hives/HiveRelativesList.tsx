import type { ReactNode } from 'react';
import { HIVE_RELATIONS, type HiveDetail, type HiveRelatives } from '../../../shared/contract/hives.ts';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** The queen of the hive, her mother, and the hives that are kin to it; each leads to its page. */
export function HiveRelativesList({ hive: { relatives, motherLine } }: { hive: HiveDetail }) {
  const { relatives: words } = useWords().hives;
  const { queen, mother, hives } = relatives;
  const groups = HIVE_RELATIONS.map((how) => ({ how, of: hives.filter((one) => one.how === how) }));
  return (
    <Section title={words.title}>
      {queen === null ? <p className="soft">{words.noQueen}</p> : null}
      {queen !== null && mother === null ? <p className="soft">{words.motherUnknown}</p> : null}
      <dl className="facts">
        <Fact name={words.queen}>{queen && <a href={`#/queens/${queen.id}`}>{queen.number}</a>}</Fact>
        <Fact name={words.mother}>{mother && <MotherLink mother={mother} />}</Fact>
        {groups.map(({ how, of }) => (
          <Fact key={how} name={how === 'same-line' ? `${words.groups[how]}, ${motherLine}` : words.groups[how]}>
            {of.length === 0 ? null : (
              <>
                {of.map(({ id, code, name }) => (
                  <span key={id} className="nowrap">
                    <a href={`#/hives/${id}`}>{[code, name].filter(Boolean).join(' ')}</a>{' '}
                  </span>
                ))}
                {how === 'sister' && mother ? (
                  <span className="soft small">{words.sameMother(mother.name)}</span>
                ) : null}
              </>
            )}
          </Fact>
        ))}
      </dl>
      {hives.length === 0 && queen !== null ? <p className="soft">{words.none}</p> : null}
    </Section>
  );
}

function Fact({ name, children }: { name: string; children: ReactNode }) {
  if (!children) return null;
  return (
    <>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </>
  );
}

function MotherLink({ mother: { kind, id, name } }: { mother: NonNullable<HiveRelatives['mother']> }) {
  const { relatives: words } = useWords().hives;
  return (
    <a href={`#/${kind === 'queen' ? 'queens' : 'hives'}/${id}`}>{kind === 'queen' ? name : words.hiveMother(name)}</a>
  );
}
