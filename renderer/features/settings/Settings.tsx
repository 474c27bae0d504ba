import { Button } from '@mui/material';
import type { Settings as SettingsOf } from '../../../shared/contract/settings.ts';
import { ask, shell } from '../../client/client.ts';
import { useAnswer, useChange, useOtherWorkbook } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { useFollowing } from '../../components/following.ts';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { Methods } from './Methods.tsx';
import { People } from './People.tsx';
import { PlanningDays } from './PlanningDays.tsx';
import { ResultKeys } from './ResultKeys.tsx';
import { SafetyCopies } from './SafetyCopies.tsx';
import { SaveActs } from './SaveActs.tsx';

const TEXT_SIZES = [90, 100, 110, 120, 130, 140, 150, 160] as const;

/** The person's choices; each is saved as it is made. */
export function Settings() {
  const { settings: words } = useWords();
  const settings = useAnswer(['settings'], () => ask.settings.getSettings.query());
  if (!settings.data) return <Page title={words.title}>{null}</Page>;
  return (
    <Page title={words.title}>
      <div className="columns">
        <div>
          <Look settings={settings.data} />
          <People settings={settings.data} />
          <ThisWorkbook />
        </div>
        <div>
          <Planning settings={settings.data} />
          <PlanningDays settings={settings.data} />
        </div>
      </div>
      <ResultKeys settings={settings.data} />
      <OwnCopies />
      <Methods />
    </Page>
  );
}

/** Demo and practice workbook are nobody's own and have no copies. */
function OwnCopies() {
  const state = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  return state.data?.open?.kind === 'real' ? <SafetyCopies /> : null;
}

const choicesOf = <Key extends string>(texts: Readonly<Record<Key, string>>) =>
  (Object.entries(texts) as [Key, string][]).map(([value, text]) => ({ value, text }));

function Look({ settings }: { settings: SettingsOf }) {
  const { settings: words } = useWords();
  const save = useChange(ask.settings.saveSettings.mutate);
  return (
    <Section title={words.look}>
      <div className="stack" style={{ maxWidth: 360 }}>
        <ChoiceField
          label={words.theme}
          value={settings.theme}
          choices={choicesOf(words.themes)}
          onChange={(theme) => void save.run({ theme })}
        />
        <ChoiceField
          label={words.textSize}
          value={String(settings.textSizePercent)}
          choices={TEXT_SIZES.map((size) => ({ value: String(size), text: `${size} %` }))}
          onChange={(size) => void save.run({ textSizePercent: Number(size) })}
        />
        <ChoiceField
          label={words.density}
          value={settings.density}
          choices={choicesOf(words.densities)}
          onChange={(density) => void save.run({ density })}
        />
        <ChoiceField
          label={words.language}
          value={settings.language}
          choices={choicesOf(words.languages)}
          onChange={(language) => void save.run({ language })}
        />
        <ChoiceField
          label={words.dateOrder}
          value={settings.dateOrder}
          choices={choicesOf(words.orders)}
          onChange={(dateOrder) => void save.run({ dateOrder })}
        />
        <ChoiceField
          label={words.weekStart}
          value={settings.weekStart}
          choices={choicesOf(words.weekStarts)}
          onChange={(weekStart) => void save.run({ weekStart })}
        />
        <ChoiceField
          label={words.temperature}
          value={settings.temperature}
          choices={choicesOf(words.temperatures)}
          onChange={(temperature) => void save.run({ temperature })}
        />
        <ChoiceField
          label={words.measures}
          value={settings.measures}
          choices={choicesOf(words.measuresOf)}
          onChange={(measures) => void save.run({ measures })}
        />
        <ChoiceField
          label={words.letterKeys}
          value={settings.letterKeys ? 'on' : 'off'}
          choices={choicesOf(words.letterKeysOf)}
          onChange={(chosen) => void save.run({ letterKeys: chosen === 'on' })}
          hint={words.letterKeysHint}
        />
        <ChangeLines {...save.state} />
      </div>
    </Section>
  );
}

function Planning({ settings }: { settings: SettingsOf }) {
  const { settings: words, number } = useWords();
  const [cells, setCells] = useFollowing(String(settings.cellsPerBuilder));
  const [rest, setRest] = useFollowing(String(settings.builderRestDays));
  const [factor, setFactor] = useFollowing(String(settings.seasonFactorPercent));
  const save = useChange(ask.settings.saveSettings.mutate);
  const problem = useProblemOf(save.state.refusal);
  const isNumber = (text: string) => /^\d{1,3}$/.test(text.trim());
  return (
    <Section title={words.planning}>
      <form
        className="stack"
        style={{ maxWidth: 360 }}
        onSubmit={(event) => {
          event.preventDefault();
          if (![cells, rest, factor].every(isNumber)) return;
          const seasonFactorPercent = Number(factor);
          void save.run({ cellsPerBuilder: Number(cells), builderRestDays: Number(rest), seasonFactorPercent });
        }}
      >
        <TextField
          label={words.cellsPerBuilder}
          value={cells}
          onChange={setCells}
          numeric
          problem={problem('cellsPerBuilder') ?? (isNumber(cells) ? null : number)}
        />
        <TextField
          label={words.seasonFactor}
          value={factor}
          onChange={setFactor}
          numeric
          hint={words.seasonFactorHint}
          problem={problem('seasonFactorPercent') ?? (isNumber(factor) ? null : number)}
        />
        <TextField
          label={words.restDays}
          value={rest}
          onChange={setRest}
          numeric
          problem={problem('builderRestDays') ?? (isNumber(rest) ? null : number)}
        />
        <SaveActs state={save.state} />
        <ChangeLines {...save.state} ownFields={['cellsPerBuilder', 'builderRestDays', 'seasonFactorPercent']} />
      </form>
    </Section>
  );
}

function ThisWorkbook() {
  const { settings: words } = useWords();
  const state = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  const close = useOtherWorkbook(() => ask.workbook.closeWorkbook.mutate());
  const open = state.data?.open;
  if (!open) return null;
  return (
    <Section title={words.workbook}>
      <dl className="facts" style={{ marginBottom: 14 }}>
        <dt>{words.file}</dt>
        <dd style={{ overflowWrap: 'anywhere' }}>{open.file}</dd>
      </dl>
      <div className="acts">
        {shell.kind === 'electron' ? (
          <Button onClick={() => void shell.showInFolder(open.file)}>{words.showInFolder}</Button>
        ) : null}
        <Button variant="outlined" onClick={() => void close.run(undefined)}>
          {words.closeWorkbook}
        </Button>
      </div>
      <ChangeLines {...close.state} />
      <p className="soft small" style={{ marginTop: 12 }}>
        {words.version(state.data?.version ?? '')}
      </p>
    </Section>
  );
}
