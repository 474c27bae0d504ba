import { Page } from '../../components/Page.tsx';
import { useWords } from '../../components/words.ts';
import { TablesOut } from './TablesOut.tsx';

/** Files that go out of the workbook. */
export function Files() {
  const { frame } = useWords();
  return (
    <Page title={frame.places.files}>
      <TablesOut />
    </Page>
  );
}
