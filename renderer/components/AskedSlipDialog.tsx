import type { SlipView } from '../../shared/contract/slip.ts';
import { PartFailed } from './PartFailed.tsx';
import { useFetched } from './use-fetched.ts';

interface AskedSlipDialogProps {
  readonly batch: string;
  readonly slip: {
    readonly asked: { readonly view: SlipView } | null;
    readonly state: { readonly busy: boolean };
    readonly confirm: () => Promise<void>;
    readonly back: () => void;
  };
}

/** The dialog while a change waits for the person's word; nothing otherwise. */
export function AskedSlipDialog({ batch, slip }: AskedSlipDialogProps) {
  const dialog = useFetched(() => import('./SlipDialog.tsx'), slip.asked !== null);
  if (!slip.asked) return null;
  if (dialog.failed) return <PartFailed onAgain={dialog.tryAgain} onLeave={slip.back} />;
  if (!dialog.part) return null;
  return (
    <dialog.part.SlipDialog
      batch={batch}
      view={slip.asked.view}
      busy={slip.state.busy}
      onConfirm={() => void slip.confirm()}
      onBack={slip.back}
    />
  );
}
