import { Button } from '@mui/material';
import { useState } from 'react';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { AddBoxes } from './AddBoxes.tsx';
import { Autumn } from './Autumn.tsx';
import { PlaceBoard, StateBoard } from './Boards.tsx';
import { BoxCard } from './BoxCard.tsx';
import { BoxTable } from './BoxTable.tsx';
import { ChosenActs } from './ChosenActs.tsx';
import { Errands } from './Errands.tsx';
import { Proposals } from './Proposals.tsx';
import { useChoosing } from './use-choosing.ts';

type Shown = 'state' | 'place' | 'list';

/**
 * The boxes as a board by state, as they stand, or as a list; above them what could be done.
 * @param chosenBox the box whose card is open, by its id or its code.
 */
export function Boxes({ chosenBox }: { chosenBox: string | null }) {
  const { boxes: words } = useWords();
  const [shown, setShown] = useState<Shown>('state');
  const [chosen, setChosen] = useState(chosenBox);
  const choosing = useChoosing(setChosen);
  const [handOut, setHandOut] = useState({ codes: '', times: 0 });
  const list = useAnswer(['boxes'], () => ask.boxes.listBoxes.query());
  if (!list.data) return <Page title={words.title}>{null}</Page>;
  const boxes = list.data;
  const box = boxes.find((one) => one.id === chosen || one.code === chosen);
  const any = boxes.length > 0;
  if (chosen !== null && !box)
    return (
      <Page title={words.title}>
        <EmptyState title={words.unknown(chosen)}>
          <a href="#/boxes">{words.allBoxes}</a>
        </EmptyState>
      </Page>
    );
  return (
    <Page title={words.title} acts={any ? <Acts /> : null}>
      {any ? null : <EmptyState title={words.empty} />}
      {box ? <BoxCard key={box.id} box={box} onClose={() => setChosen(null)} /> : null}
      <Proposals boxes={boxes} />
      {any ? (
        <Section title={words.board} acts={<ShownChoice shown={shown} setShown={setShown} />}>
          <ChosenActs
            boxes={boxes.filter((one) => choosing.ids.has(one.id))}
            onHandOut={(codes) => setHandOut(({ times }) => ({ codes, times: times + 1 }))}
            onClear={choosing.clear}
          />
          {shown === 'state' ? <StateBoard boxes={boxes} choosing={choosing} /> : null}
          {shown === 'place' ? <PlaceBoard boxes={boxes} choosing={choosing} /> : null}
          {shown === 'list' ? <BoxTable boxes={boxes} choosing={choosing} /> : null}
        </Section>
      ) : null}
      {any ? <Autumn /> : null}
      <AddBoxes />
      <Errands handOut={handOut} />
    </Page>
  );
}

function Acts() {
  const { boxes: words, feeding } = useWords();
  return (
    <>
      <Button onClick={() => goTo('/boxes/feeding')}>{feeding.open}</Button>
      <Button variant="contained" onClick={() => goTo('/boxes/looks')}>
        {words.typeLooks}
      </Button>
    </>
  );
}

function ShownChoice({ shown, setShown }: { shown: Shown; setShown: (shown: Shown) => void }) {
  const { boxes: words } = useWords();
  return (
    <ChoiceField
      label={words.show}
      value={shown}
      choices={(['state', 'place', 'list'] as const).map((value) => ({ value, text: words.shows[value] }))}
      onChange={setShown}
    />
  );
}
