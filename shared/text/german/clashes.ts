import type { Day, IsoDay } from '../../kernel/day.ts';
import type { ClashOf, StartTroubleOf } from '../../model/clash.ts';
import {
  type ClashNames,
  type clashWords as english,
  clashSentence as englishClash,
  startTroubleSentence as englishTrouble,
} from '../english/clashes.ts';
import type { Translation } from '../translation.ts';
import { STEP_TITLES } from './step-titles.ts';

const title = (step: keyof typeof STEP_TITLES) => `„${STEP_TITLES[step] ?? step}“`;

export const clashWords: Translation<typeof english> = {
  ahead: 'Überschneidungen voraus',
  one: 'Überschneidungen dieser Serie',
  none: 'Nichts steht im Weg.',
  thisBatch: 'diese Serie',
  whichDay: 'An welchem Tag beginnen?',
  columns: { day: 'Tag', means: 'Was er bedeuten würde' },
  take: 'Nehmen',
  takeDay: (day: string) => `${day} nehmen`,
  taken: 'genommen',
  good: 'Gut.',
  goodDays: (good: number, of: number) =>
    `${good === 1 ? 'Ein guter Tag' : `${good} gute Tage`} in den kommenden ${of}, die passendsten zuerst.`,
  noGoodDay: (of: number) => `Keiner der kommenden ${of} Tage passt in allem. Sehen Sie, was jeder bedeuten würde.`,
  showAll: (days: number) => `Alle ${days} Tage zeigen`,
  showGood: 'Nur die guten Tage zeigen',
  shifted: (steps: readonly string[]) =>
    `${steps.map((step) => `„${step}“`).join(' und ')} an einem anderen Tag ${steps.length === 1 ? 'seiner' : 'ihrer'} Spanne.`,
  gives: (place: string | null, emerges: string) =>
    place === null ? `Königinnen schlüpfen ${emerges}.` : `Zellen versetzen ${place}, Königinnen schlüpfen ${emerges}.`,
};

/** After "von": the batch that has no code yet changes its ending. */
const von = (batch: string) => `von ${batch === clashWords.thisBatch ? 'dieser Serie' : batch}`;

type Clash = ClashOf<Day | IsoDay>;
type StartTrouble = StartTroubleOf<Day | IsoDay>;

export function clashSentence(clash: Clash, names: ClashNames): string {
  const sentence = clashText(clash, names);
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

function clashText(clash: Clash, names: ClashNames): string {
  const { batch, hive, day } = names;
  switch (clash.kind) {
    case 'builder-busy':
      return `${batch(clash.batch)} braucht ${hive(clash.builderId)} ab ${day(clash.on)}, aber es pflegt die Zellen ${von(batch(clash.other))} bis ${day(clash.holdsUntil)} und ruht danach. Beginnen Sie am ${day(clash.freeFrom)} oder später, oder nehmen Sie ein anderes Pflegevolk.`;
    case 'too-many-cells':
      return `${batch(clash.batch)} hat ${clash.cells} Zellen in ${hive(clash.builderId)}; etwa ${clash.usualMost} pflegt ein Pflegevolk gut zu Ende. Verteilen Sie sie auf ${clash.builders} Pflegevölker, oder beginnen Sie weniger.`;
    case 'too-few-boxes':
      return `Am ${day(clash.on)} ${clash.cells === 1 ? 'ist eine Zelle' : `sind bis zu ${clash.cells} Zellen`} schlupfreif, aber ${boxesSaid(clash, day)}`;
    case 'ages-mixed-on-bar':
      return `Auf einer Leiste sind Zellen ${von(batch(clash.batch))}, gegeben ${day(clash.on)}, und ${von(batch(clash.other))}, gegeben ${day(clash.otherOn)}. Die älteren Königinnen würden die jüngeren Zellen zerstören: Kennzeichnen Sie sie, oder hängen Sie einen Satz auf eine eigene Leiste.`;
    case 'must-step-away':
      return `${title(clash.step)} ${von(batch(clash.batch))} fällt auf ${day(clash.on)}, ${clash.reason === 'away' ? 'wenn Sie fort sind' : 'keinen Ihrer Tage'}. ${awayRemedy(clash.suits, day)}`;
    case 'job-in-hands-off':
      return `${title(clash.step)} ${von(batch(clash.batch))} fällt auf ${day(clash.on)}, aber ${hive(clash.hiveId)} muss wegen der Zellen ${von(batch(clash.other))} bis ${day(clash.until)} in Ruhe bleiben. Die nächsten freien Tage sind ${clash.alternatives.map(day).join(' und ')}; oder nehmen Sie Larven aus einem anderen Volk.`;
    case 'no-drones-yet':
      return `Königinnen ${von(batch(clash.batch))} können ab ${day(clash.fliesFrom)} fliegen, aber die ersten Drohnen sind nicht vor ${day(clash.dronesMatureFrom)} geschlechtsreif. Beginnen Sie ${days(clash.daysLater)} später, oder sehen Sie in anderen Völkern nach verdeckelter Drohnenbrut.`;
    default:
      return englishClash(clash, names);
  }
}

export function startTroubleSentence(trouble: StartTrouble, names: Pick<ClashNames, 'batch' | 'day'>): string {
  const { batch, day } = names;
  switch (trouble.kind) {
    case 'must-step-away':
      return `${title(trouble.step)} am ${day(trouble.on)} passt Ihnen nicht, und kein anderer Tag ginge.`;
    case 'starts-in-past':
      return `${title(trouble.step)} wäre am ${day(trouble.on)} fällig gewesen.`;
    case 'builder-taken':
      return `Das Pflegevolk ist von ${batch(trouble.batch)} belegt oder ruht bis ${day(trouble.until)}.`;
    case 'too-few-boxes':
      return `Am ${day(trouble.on)} ${freeBoxes(trouble.freeBoxes)} frei für ${trouble.cells} Zellen.`;
    case 'no-drones-yet':
      return `Königinnen können ab ${day(trouble.fliesFrom)} fliegen, die ersten Drohnen sind ab ${day(trouble.dronesMatureFrom)} geschlechtsreif.`;
    default:
      return englishTrouble(trouble, names);
  }
}

const freeBoxes = (count: number): string =>
  count === 0
    ? 'ist kein Begattungskästchen'
    : count === 1
      ? 'ist ein Begattungskästchen'
      : `sind ${count} Begattungskästchen`;
const days = (count: number): string => (count === 1 ? 'einen Tag' : `${count} Tage`);

type TooFewBoxes = Extract<Clash, { kind: 'too-few-boxes' }>;

const NO_BOX_YET =
  'im Arbeitsbuch steht noch kein Begattungskästchen. Legen Sie Kästchen unter Begattungskästchen an, oder planen Sie, die Zellen in Käfigen zu halten.';

const boxesSaid = (clash: TooFewBoxes, day: ClashNames['day']): string =>
  clash.boxes === 0 ? NO_BOX_YET : `es ${freeBoxes(clash.freeBoxes)} frei. ${boxRemedy(clash, day)}`;

function boxRemedy({ cells, deadline, freeByDeadline }: TooFewBoxes, day: ClashNames['day']): string {
  if (freeByDeadline >= cells) return `Setzen Sie den Rest bis ${day(deadline)} ein, wenn genug Kästchen frei sind.`;
  return `Machen Sie bis ${day(deadline)} noch ${cells - freeByDeadline} bereit, oder halten Sie die übrigen Zellen in Käfigen.`;
}

function awayRemedy(suits: readonly (Day | IsoDay)[], day: ClashNames['day']): string {
  if (suits.length === 0)
    return 'Kein anderer Tag ist sicher: Bitten Sie jemanden darum, oder beginnen Sie an einem anderen Tag.';
  return `Es geht auch am ${suits.map(day).join(' oder ')}.`;
}
