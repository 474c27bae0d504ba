/** The envelope both shells carry: one request, one reply. Plain JSON only; days travel as ISO text. */
export type CallKind = 'query' | 'mutation';

export interface CallRequest {
  readonly kind: CallKind;
  /** `feature.operation`, or `shell.something` for what only the shell can do (dialogs, menu, saving a file). */
  readonly path: string;
  readonly input?: unknown;
}

export type CallReply =
  | { readonly ok: true; readonly data: unknown }
  | {
      readonly ok: false;
      readonly error: { readonly message: string; readonly code: number; readonly data: Record<string, unknown> };
    };

export interface Bridge {
  readonly shell: 'electron' | 'loopback';
  call(request: CallRequest): Promise<CallReply>;
}

export const CALL_CHANNEL = 'ripecell:call';

/** Questions that are reckoned in a thread of their own: an answer may take seconds on an old computer. */
export const RECKONED: ReadonlySet<string> = new Set([
  'season.getHiveStanding',
  'season.compareStage',
  'season.getBatchExpectation',
  'season.getBatchesToSettle',
  'season.previewDrawn',
  'season.previewPlan',
]);
