import { Button } from '@mui/material';
import type { SeasonPlan, WishLine } from '../../../shared/contract/season-plan.ts';
import type { Wish } from '../../../shared/model/wish.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { useTakeOut } from '../../client/taken-out.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { Section } from '../../components/Section.tsx';
import { useDays, useToday, useWords } from '../../components/words.ts';
import { WishForm } from './WishForm.tsx';

/** Who wants how many queens by when, and what is there for it. */
export function Wishes({ plan }: { plan: SeasonPlan }) {
  const { planPage: words } = useWords().season;
  const wanted = plan.wishes.reduce((sum, wish) => sum + wish.open, 0);
  return (
    <Section title={words.wishes}>
      {plan.wishes.length === 0 ? (
        <p className="soft">{words.wishesEmpty}</p>
      ) : (
        <>
          <p>
            {words.wishesLine(wanted, plan.proved, plan.laying)} <a href="#/season?tab=queens">{words.startLine}</a>
          </p>
          <WishTable wishes={plan.wishes} />
        </>
      )}
      <WishForm />
    </Section>
  );
}

function WishTable({ wishes }: { wishes: readonly WishLine[] }) {
  const { planPage: words } = useWords().season;
  const days = useDays();
  const { columns } = words;
  return (
    <DataTable
      caption={words.wishes}
      rows={wishes}
      rowKey={(wish) => wish.id}
      quiet={(wish) => wish.open === 0}
      columns={[
        { key: 'who', title: columns.who, head: true, cell: (wish) => wish.forWhom ?? words.own },
        { key: 'by', title: columns.by, cell: (wish) => days.short(wish.wantedOn) },
        { key: 'queens', title: columns.queens, numeric: true, cell: (wish) => wish.queens },
        {
          key: 'handed-over',
          title: columns.handedOver,
          numeric: true,
          cell: (wish) => wish.handedOver ?? <span className="soft">{words.notReckoned}</span>,
        },
        {
          key: 'open',
          title: columns.open,
          numeric: true,
          cell: (wish) => (wish.settledOn === null ? wish.open : words.settled(days.short(wish.settledOn))),
        },
        { key: 'note', title: columns.note, cell: (wish) => wish.note },
        { key: 'acts', title: '', cell: (wish) => <WishActs wish={wish} /> },
      ]}
    />
  );
}

function WishActs({ wish }: { wish: WishLine }) {
  const { planPage: words } = useWords().season;
  const days = useDays();
  const today = useToday();
  const save = useChange(ask.season.saveWish.mutate);
  const remove = useTakeOut(ask.season.removeWish.mutate);
  const named = (act: string) => words.actsOn(act, wish.forWhom ?? words.own, days.short(wish.wantedOn));
  const settle: Wish = { ...bare(wish), settledOn: wish.settledOn === null ? today : null };
  const act = wish.settledOn === null ? words.settle : words.reopen;
  return (
    <div className="acts">
      <Button size="small" aria-label={named(act)} disabled={save.state.busy} onClick={() => void save.run(settle)}>
        {act}
      </Button>
      <Button
        size="small"
        aria-label={named(words.remove)}
        disabled={remove.state.busy}
        onClick={() => void remove.run({ wishId: wish.id })}
      >
        {words.remove}
      </Button>
      <ChangeLines {...save.state} />
      <ChangeLines {...remove.state} />
    </div>
  );
}

const bare = ({ id, forWhom, queens, wantedOn, settledOn, note }: WishLine): Wish => ({
  id,
  forWhom,
  queens,
  wantedOn,
  settledOn,
  note,
});
