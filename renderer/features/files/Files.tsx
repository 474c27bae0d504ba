import { Page } from '../../components/Page.tsx';
import { useWords } from '../../components/words.ts';
import { CalendarFile } from './CalendarFile.tsx';
import { Moving } from './Moving.tsx';
import { TablesIn } from './TablesIn.tsx';
import { TablesOut } from './TablesOut.tsx';
import { WholeIn } from './WholeIn.tsx';

/** Files that go out of the workbook and come into it. */
export function Files() {
  const { frame } = useWords();
  return (
    <Page title={frame.places.files}>
      <CalendarFile />
      <TablesOut />
      <TablesIn />
      <WholeIn />
      <Moving />
    </Page>
  );
}
