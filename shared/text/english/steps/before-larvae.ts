import type { Step } from '../../../model/step.ts';
import type { StepText } from './step-words.ts';

type HeadStep = Extract<
  Step,
  | 'feed-start'
  | 'insert-frame'
  | 'cage-queen'
  | 'release-queen'
  | 'first-transfer'
  | 'make-queenless'
  | 'remove-queen'
  | 'give-larvae'
>;

export const BEFORE_LARVAE = {
  'feed-start': {
    what: 'Give the builder half a litre to a litre of thin sugar syrup each day, and see that a comb of pollen stands where the cells will hang. Go on until the cells are sealed, unless nectar comes in.',
    why: 'Cells are built from what nurse bees have in plenty. In a week without nectar a colony starts few cells and feeds them poorly.',
    caution:
      'Feed inside the hive, in the evening, and spill nothing: robbing starts in minutes. Use sugar only; honey or pollen from elsewhere can carry disease. Keep syrup out of honey you mean to eat or sell.',
  },
  'insert-frame': {
    what: 'Hang an empty, dark worker comb in the middle of the breeder’s brood nest. Write today’s date on its top bar.',
    why: 'The queen lays it within a day or so. Then all its larvae are nearly of one age, and you know which.',
    caution:
      'Look the breeder over for disease and mites first. If you see sunken, smelling or chalky brood, move no comb and ask your bee inspector or adviser.',
    byMethod: {
      'cut-comb-edge': {
        what: 'Hang the frame for cutting in the middle of the breeder’s brood nest: a drawn new comb, or a frame with two to four pointed strips of foundation. Write today’s date on its top bar.',
        why: 'The bees draw it downwards and the queen follows. After some days the youngest larvae stand along the lower edge, where you will trim. Strips need three to four days more than drawn comb.',
        caution:
          'Strips are not drawn without a flow or feeding: look after three days. Before you open the breeder for this, look it over for disease; suspect brood must not be moved.',
      },
      'comb-strip': {
        what: 'Hang a light, empty worker comb in the middle of the breeder’s brood nest, and mark it.',
        why: 'In four days it holds just-hatched larvae. Light comb cuts into clean strips; old dark comb tears.',
      },
      'flat-comb': {
        what: 'Hang a new, light worker comb in the middle of the breeder’s brood nest until one whole side is full of eggs and just-hatched larvae.',
        why: 'The comb will lie face down over the builder, so it must be well filled and sound.',
      },
      'cell-punch': {
        what: 'Hang a worker comb that you can spare in the breeder’s brood nest, and mark it.',
        why: 'You will punch single cells out of it with larva and food untouched. The comb is left full of holes.',
      },
      'caged-laying-plugs': {
        title: 'Put the laying box in the breeder',
        what: 'Hang the laying box, without the queen, in the middle of the breeder’s brood nest for a day or two.',
        why: 'Bees clean and polish the cells. A queen is slow to lay in cells that smell of the shop.',
        caution:
          'Make room for it by taking out a comb without brood. Keep the comb you take where robbers and wax moth cannot reach it.',
      },
    },
  },
  'cage-queen': {
    what: 'Find the breeder queen, run her into the laying box and close it. Write down the hour.',
    why: 'All eggs in the box are then laid within a day, so that the age of every larva is known to a few hours.',
    caution:
      'Handle her gently, over the open hive and out of the wind. If you cannot find her in a quarter of an hour, close up and try tomorrow: a chilled brood nest costs more than a day.',
  },
  'release-queen': {
    what: 'Look for eggs in the laying box. If there are enough, let the queen out, 12 to 24 hours after caging, and leave the box in the brood nest.',
    why: 'One day of laying is enough. Longer and the larvae would be of mixed ages; and the colony misses her.',
    caution:
      'No eggs after a day: keep her in for 12 to 24 hours more, never beyond a day and a half. If there are none then, let her out and rest her for three days.',
  },
  'first-transfer': {
    what: 'Lift young larvae of any good colony into the cups and give them to the builder. They only prepare the cups.',
    why: 'Bees fill the cups with jelly. Tomorrow you take these larvae out and lay the chosen ones on the jelly. Double grafting gives slightly heavier queens and asks for twice the work.',
    caution:
      'Every first larva must come out tomorrow. One left behind emerges about a day early and kills the others.',
  },
  'make-queenless': {
    what: 'Take the builder’s queen away with two or three combs, leave little open brood, and shake in young bees from four to six combs. Feed.',
    why: 'Bees that miss their queen and have no larvae of their own to turn to accept the larvae you give. After half a day to two days they are ready.',
    caution:
      'Be sure that the queen is out, and that no second one is in: a hidden queen or virgin is the commonest cause of no take at all. A builder is full of bees and heavy, so lift with a second person, and wear your veil.',
    byBuilder: {
      'starter-then-finisher': {
        title: 'Fill the starter box',
        what: 'Two to six hours before the larvae come, shake one to two kilos of nurse bees into a ventilated box: no queen, no open brood; one comb of pollen, one or two of food, a wet sponge, and a gap for the bar. Keep it dark and cool.',
        why: 'Shut-in nurse bees with food, no queen and no brood start cells within hours.',
        caution:
          'Look twice that no queen is among the bees you shake. A closed box overheats fast: shade, ventilation and water, and never in the sun or in a parked car.',
      },
      'queenright-over-excluder': {
        title: 'Arrange the builder over the excluder',
        what: 'Put the queen in the lower box under an excluder. Raise two combs of open brood and one of pollen into the upper box, with a gap between them for the bar.',
        why: 'Nurse bees follow the brood upwards. Far from the queen they start cells, and she goes on laying below: the colony can be used all season.',
        caution:
          'Check the excluder for gaps. Bees build their own cells on raised combs: destroy them before you give larvae, and again within the week. Full boxes are heavy; lift with a second person.',
      },
      'divider-board': {
        title: 'Close the slide of the divider board',
        what: 'Close the slide, open the lower rear door, and take young open brood out of the top.',
        why: 'The upper bees lose touch with their queen and are ready for larvae in half a day to a day.',
        caution: 'Make sure that both halves have an open door and air before you leave.',
      },
      'queen-parked-above': {
        title: 'Park the queen above',
        what: 'Move the boxes with queen and open brood above the screened board with a door of their own. Let the field bees gather in the lower part, where the larvae will go.',
        why: 'The lower bees are many and feel queenless. The queen comes back below in a day or two, before she is missed for good.',
        caution: 'Two people for the lifting. See that the upper part has food and its door is open.',
      },
    },
  },
  'remove-queen': {
    what: 'Take the queen out, or divide the colony in two even halves with eggs, young brood, food and bees in both. Write down the hour.',
    why: 'Within a day the bees begin emergency cells over young larvae. From this hour on all days are counted.',
    caution:
      'Both halves need eggs or larvae younger than two days, or the one without a queen cannot raise one. Moving bees between places may need a permit where you are.',
    byBuilder: {
      'divider-board': {
        title: 'Fit the divider board, slide open',
        what: 'Queen below under an excluder; open brood, nurse bees and pollen above; the board between them with its slide open. Turn the hive so that field bees use the upper door. Hang in the cups to be cleaned.',
        why: 'In two days the upper part fills with bees and gets used to the place, before the slide shuts it off.',
        caution: 'Look for the queen before you close up: she must be below. Two people for the lifting.',
      },
    },
  },
  'give-larvae': {
    what: 'Destroy every cell the builder has begun by itself; shake the bees off to see. Then transfer larvae of 12 to 24 hours, the size of an egg and lying in a drop of jelly, into the cups, and hang the bar in the gap.',
    why: 'This is day 0. Larvae this young become the heaviest queens; one day older and take and weight both fall. All later days are reckoned from now.',
    caution:
      'Work warm and out of sun and wind, with a damp cloth over the bar, a bar in ten minutes. Bees sting: keep a phone by you, and anyone who has ever reacted badly to stings does not work alone.',
    byMethod: {
      'larva-grafting-double': {
        title: 'Replace the larvae by the chosen ones',
        what: 'Lift every first larva out of its jelly and lay a chosen larva of 12 to 24 hours on it. Hang the bar back.',
        why: 'This is day 0: all later days are reckoned from this second transfer.',
        caution:
          'Count the larvae you lift out. One left behind emerges about a day early and kills the others. Keep a phone by you, and do not work alone if you have ever reacted badly to stings.',
      },
      'cut-comb-edge': {
        title: 'Trim the comb edge and give it',
        what: 'Destroy the builder’s own cells. Trim the comb with a warm sharp knife up to the youngest larvae, and squash two of every three larvae along the edge. Hang the comb in the builder.',
        why: 'This is day 0. Bees draw queen cells from the larvae that stand free on the edge, and thinned larvae give cells that come apart without damage.',
        caution:
          'Look at the edge first: with eggs there instead of larvae everything comes one to three days later, so note it. Cut away from your hand. Do not chill the comb; a damp cloth and ten minutes, no more.',
      },
      'comb-strip': {
        title: 'Cut strips and give them',
        what: 'Cut the comb into strips one cell wide, crush two of every three larvae, and fix the strips with wax under a bar, cells downwards. Hang it in the queenless bees.',
        why: 'This is day 0. Cells hang singly and room is left to cut them apart later.',
        caution:
          'Melt wax over water, never on a bare flame and never unattended. Do not bend the strip hard: bees throw the larvae out. Cut away from your hand.',
      },
      'flat-comb': {
        title: 'Lay the comb flat over the builder',
        what: 'Keep every fourth row and in it one larva of three; crush all the rest. Lay the comb face down on a spacer over the queenless bees and cover it warmly.',
        why: 'This is day 0. Bees draw cells downwards from the larvae left. The space of three to four centimetres gives them room.',
        caution:
          'The ages are mixed, so the oldest larva decides: watch the earliest day. Cover against cold at once. Hold to 20 cells, however many are begun.',
      },
      'cell-punch': {
        title: 'Punch cells and give them',
        what: 'Punch out single cells with larvae of 12 to 24 hours, shorten them, and fix them to the bar with wax, mouth down. Hang the bar in the builder.',
        why: 'This is day 0. The larva and its food are never touched.',
        caution:
          'Warm the tool, but no hotter than the hand can bear. Melt wax over water, never unattended. Keep the comb from chilling while you work.',
      },
      'caged-laying-plugs': {
        title: 'Move the larvae on their plugs',
        what: 'Pull the plugs that hold larvae of up to a day old, and fix them on the bar, cups down. Hang the bar in the builder.',
        why: 'This is day 0. Larvae are ready four to five days after the queen was caged: sources differ because laying often begins late.',
        caution:
          'No larvae yet: wait a day. Larvae filling more than a third of the floor: do it today. Do not tip the plugs, the larva lies loose on its food.',
      },
    },
  },
} as const satisfies Record<HeadStep, StepText>;
