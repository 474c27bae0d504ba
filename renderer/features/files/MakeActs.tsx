import { Button } from '@mui/material';
import type { ChangeState } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';

interface MakeActsProps {
  readonly label: string;
  readonly making: { readonly outcome: string | null; readonly state: ChangeState };
  readonly onMake: () => void;
  /** Fields whose refusal stands beside them. */
  readonly ownFields?: readonly string[];
}

/** The button that makes a file, and below it how that went. */
export function MakeActs({ label, making: { outcome, state }, onMake, ownFields = [] }: MakeActsProps) {
  return (
    <>
      <div className="acts">
        <Button variant="contained" disabled={state.busy} onClick={onMake}>
          {label}
        </Button>
      </div>
      {outcome ? (
        <p className="line-good" role="status">
          {outcome}
        </p>
      ) : null}
      <ChangeLines {...state} ownFields={ownFields} />
    </>
  );
}
