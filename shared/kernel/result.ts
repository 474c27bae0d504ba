/** What an operation answers when it can be refused for a reason the person can mend. Our own mistakes are thrown. */
export type Result<Value, Refusal> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusal: Refusal };

export const ok = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value });

export const refuse = <Refusal>(refusal: Refusal): { readonly ok: false; readonly refusal: Refusal } => ({
  ok: false,
  refusal,
});
