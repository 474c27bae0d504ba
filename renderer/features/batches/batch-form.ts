import type { BatchFormOffer, BatchStart } from '../../../shared/contract/batches.ts';
import { type IsoDay, isIsoDay } from '../../../shared/kernel/day.ts';
import { type BuilderType, type Comb, METHODS, type Method } from '../../../shared/model/method.ts';
import type { Step } from '../../../shared/model/step.ts';
import { parseDegrees, type TemperatureUnit } from '../../../shared/text/degrees.ts';

/** What stands in the form, as typed. */
export interface BatchForm {
  readonly method: Method;
  /** The person's own copy of the method, when one was chosen. */
  readonly methodCopyId: string | null;
  readonly comb: Comb;
  readonly mother: string;
  readonly builder: string;
  readonly builderType: BuilderType;
  readonly anchorStep: Step;
  readonly day: IsoDay | null;
  readonly cells: string;
  readonly bars: string;
  readonly larvaFrom: string;
  readonly larvaTo: string;
  readonly celsius: string;
  readonly practice: boolean;
}

/** The steps a start can be reckoned from, first choice first. */
export const ANCHORS: Readonly<Record<Method, readonly Step[]>> = {
  'larva-grafting': ['give-larvae', 'insert-frame'],
  'larva-grafting-double': ['give-larvae', 'first-transfer'],
  'cut-comb-edge': ['give-larvae', 'insert-frame'],
  'comb-strip': ['give-larvae', 'insert-frame'],
  'flat-comb': ['give-larvae', 'insert-frame'],
  'cell-punch': ['give-larvae', 'insert-frame'],
  'caged-laying-plugs': ['cage-queen', 'give-larvae'],
  'emergency-cells': ['remove-queen'],
  'swarm-cells': ['sealed'],
  'supersedure-cells': ['sealed'],
};

export const firstAnchor = (method: Method): Step => ANCHORS[method][0] ?? 'give-larvae';

/** Last time's method, hives and number of cells, and today. */
export function startingForm(offer: BatchFormOffer, today: IsoDay): BatchForm {
  const code = (list: readonly { readonly id: string; readonly code: string }[], id: string | null | undefined) =>
    list.find((hive) => hive.id === id)?.code ?? '';
  const method = offer.last?.method ?? 'cut-comb-edge';
  const free = offer.builders.find((hive) => hive.id === offer.last?.builderId && hive.freeFrom === null);
  return {
    method,
    methodCopyId: null,
    comb: 'drawn',
    mother: code(offer.breeders, offer.last?.breederId),
    builder: free?.code ?? '',
    builderType: 'queenless',
    anchorStep: firstAnchor(method),
    day: today,
    cells: offer.last?.cells ? String(offer.last.cells) : '',
    bars: '1',
    larvaFrom: '',
    larvaTo: '',
    celsius: '',
    practice: false,
  };
}

/** What the address asks for: another batch like one, or one with a certain hive, from the day that hive is free. */
export function givenForm(offer: BatchFormOffer, query: URLSearchParams): Partial<BatchForm> {
  const given = (['mother', 'builder', 'cells', 'day'] as const).flatMap((field) => {
    const text = query.get(field);
    return text === null || (field === 'day' && !isIsoDay(text)) ? [] : [[field, text] as const];
  });
  return { ...chosenMethod(offer, query.get('method') ?? ''), ...Object.fromEntries(given) };
}

const wholeNumber = (text: string): number | null => (/^\d{1,3}$/.test(text.trim()) ? Number(text) : null);

/** A field that must be a whole number or empty, and is neither. */
export const isNoNumber = (text: string): boolean => text.trim() !== '' && wholeNumber(text) === null;

interface FormIds {
  readonly batch: string;
  readonly breeder: string;
  readonly builder: string;
}

/** The form as the operation wants it; null while no day can be read. */
export function batchStart(
  form: BatchForm,
  offer: BatchFormOffer,
  ids: FormIds,
  unit: TemperatureUnit = 'celsius',
): BatchStart | null {
  if (form.day === null) return null;
  const mother = hive(form.mother, offer.breeders, ids.breeder);
  const builder = hive(form.builder, offer.builders, ids.builder);
  return {
    id: ids.batch,
    code: null,
    method: form.method,
    methodCopyId: form.methodCopyId,
    comb: form.method === 'cut-comb-edge' ? form.comb : null,
    builderType: form.builderType,
    breederId: mother.id,
    newBreeder: mother.fresh,
    builderId: builder.id,
    newBuilder: builder.fresh,
    anchorStep: form.anchorStep,
    anchorOn: form.day,
    larvaAgeFromHours: wholeNumber(form.larvaFrom),
    larvaAgeToHours: wholeNumber(form.larvaTo),
    sealedCelsius: parseDegrees(form.celsius, unit),
    cellsPlanned: wholeNumber(form.cells),
    practice: form.practice,
    note: null,
    bars: Math.max(1, wholeNumber(form.bars) ?? 1),
  };
}

interface KnownHive {
  readonly id: string;
  readonly code: string;
  readonly name?: string | null;
}

const plain = (text: string): string => text.toLowerCase().replace(/(^|\D)0+(?=\d)/g, '$1');
const numberOf = (code: string): string => plain(code).replace(/^\D+/, '');

/**
 * The hive meant by a few letters: its code with or without zeros (h3), its number alone (12), or the beginning of its
 * name (an). Only where just one hive is meant; the beginning of a code is none, since H1 may be a new hive beside H12.
 */
function meantHive(typed: string, known: readonly KnownHive[]): KnownHive | undefined {
  const exact = known.find((one) => one.code.toLowerCase() === typed.toLowerCase());
  const same = exact ?? known.find((one) => plain(one.code) === plain(typed));
  if (same) return same;
  const meant = /^\d+$/.test(typed)
    ? known.filter((one) => numberOf(one.code) === plain(typed))
    : known.filter((one) => typed.length > 1 && one.name?.toLowerCase().startsWith(typed.toLowerCase()));
  return meant.length === 1 ? meant[0] : undefined;
}

/** A typed code is a known hive, a new one, or none. */
export function hive(typed: string, known: readonly KnownHive[], freshId: string) {
  const code = typed.trim();
  if (code === '') return { id: null, fresh: null };
  const found = meantHive(code, known);
  return found ? { id: found.id, fresh: null } : { id: null, fresh: { id: freshId, code } };
}

/** Built-in methods and the person's own copies, as one list to choose from. */
export function methodChoices(offer: BatchFormOffer, nameOf: (method: Method) => string) {
  return [
    ...METHODS.map((method) => ({ value: method as string, text: nameOf(method) })),
    ...offer.methodCopies.map((copy) => ({ value: copy.id, text: copy.name })),
  ];
}

/** What choosing from that list changes in the form. */
export function chosenMethod(offer: BatchFormOffer, value: string): Partial<BatchForm> {
  const copy = offer.methodCopies.find((one) => one.id === value);
  const method = copy?.origin ?? METHODS.find((one) => one === value);
  return method ? { method, methodCopyId: copy?.id ?? null, anchorStep: firstAnchor(method) } : {};
}
