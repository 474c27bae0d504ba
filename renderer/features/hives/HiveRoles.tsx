import { Button } from '@mui/material';
import type { HiveDetail } from '../../../shared/contract/hives.ts';
import { ROLES, type Role } from '../../../shared/model/colony.ts';
import { ask } from '../../client/client.ts';
import { useDraft } from '../../client/drafts.ts';
import { newId, useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { DayField } from '../../components/DayField.tsx';
import { FoundDraft } from '../../components/FoundDraft.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useToday, useWords } from '../../components/words.ts';

/** What the hive is used for this season, what it was before, and its own particulars. */
export function HiveRoles({ hive }: { hive: HiveDetail }) {
  const { hives: words } = useWords();
  const season = Number(useToday().slice(0, 4));
  const set = useChange(ask.hives.setRoles.mutate);
  const earlier = hive.rolesBySeason.filter((one) => one.season !== season);
  const toggle = (role: Role, on: boolean) => {
    const roles = ROLES.filter((one) => (one === role ? on : hive.roles.includes(one)));
    void set.run({ colonyId: hive.id, season, roles: [...roles], ids: roles.map(() => newId()) });
  };
  return (
    <Section title={words.one.details}>
      <fieldset style={{ marginBottom: 16 }}>
        <legend>{words.rolesIn(season)}</legend>
        <div className="row">
          {ROLES.map((role) => (
            <label key={role} className="check">
              <input
                type="checkbox"
                checked={hive.roles.includes(role)}
                onChange={(event) => toggle(role, event.target.checked)}
              />
              {words.roles[role]}
            </label>
          ))}
        </div>
        {earlier.map((one) => (
          <p key={one.season} className="soft small">
            {words.rolesIn(one.season)}: {one.roles.map((role) => words.roles[role]).join(', ')}
          </p>
        ))}
        <ChangeLines {...set.state} />
      </fieldset>
      <Particulars hive={hive} />
    </Section>
  );
}

function Particulars({ hive }: { hive: HiveDetail }) {
  const { hives: words } = useWords();
  const [code, setCode] = useFollowing(hive.code);
  const [name, setName] = useFollowing(hive.name ?? '');
  const [line, setLine] = useFollowing(hive.motherLine ?? '');
  const [place, setPlace] = useFollowing(hive.place ?? '');
  const { value: note, set: setNote, found } = useDraft(`hive-note:${hive.id}`, hive.colony.note ?? '');
  const [endedOn, setEndedOn] = useFollowing(hive.colony.endedOn);
  const save = useChange(ask.hives.saveHive.mutate);
  const problem = useProblemOf(save.state.refusal);
  const textOrNull = (text: string) => (text.trim() === '' ? null : text);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        setNote(note.trim());
        void save.run({
          ...hive.colony,
          code,
          name: textOrNull(name),
          motherLine: textOrNull(line),
          place: textOrNull(place),
          note: textOrNull(note),
          endedOn,
        });
      }}
    >
      <div className="row">
        <TextField label={words.code} value={code} onChange={setCode} problem={problem('code')} required />
        <TextField label={words.name} value={name} onChange={setName} problem={problem('name')} />
        <TextField label={words.line} value={line} onChange={setLine} />
        <TextField label={words.place} value={place} onChange={setPlace} />
        <DayField label={words.one.ended} value={endedOn} onChange={setEndedOn} />
      </div>
      <TextField label={words.one.note} value={note} onChange={setNote} problem={problem('note')} multiline />
      <div className="acts">
        <Button type="submit" variant="outlined" disabled={save.state.busy}>
          {words.one.save}
        </Button>
        {save.state.done ? (
          <span className="line-good" role="status">
            {words.one.saved}
          </span>
        ) : null}
      </div>
      <FoundDraft found={found} />
      <ChangeLines {...save.state} ownFields={['code', 'name', 'note']} />
    </form>
  );
}
