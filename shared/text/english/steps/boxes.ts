import type { Step } from '../../../model/step.ts';
import type { StepText } from './step-words.ts';

type BoxStep = Extract<
  Step,
  | 'stock-boxes'
  | 'place-cells'
  | 'set-out'
  | 'emergence'
  | 'emergence-check'
  | 'hands-off-mating'
  | 'first-look'
  | 'sealed-brood-look'
  | 'late-warning'
  | 'give-up'
>;

export const BOXES = {
  'stock-boxes': {
    what: 'Shake young bees from open brood into each box, a good cup for a mini box, one comb of brood and two of bees for a nucleus. Give food, close the door, and stand them cool and dark.',
    why: 'Shut in for a day or more without a queen, bees settle, forget their hive, and welcome a cell.',
    caution:
      'No queen and no drones among the bees. Never leave closed boxes in the sun or in a car: they die within minutes. Moving bees between places may need a permit or a certificate where you are.',
  },
  'place-cells': {
    what: 'Carry the cells upright and warm, one into each box, tip down between two combs. Write which cell went where. Spare cells go in cages.',
    why: 'Ripe cells bear being moved; two days before the queens come is the time. The last day allowed is reckoned from the oldest larva there may be, less half a day.',
    caution:
      'Check a day early when in doubt about the age of the larvae: the first queen out kills the others in their cells. No cold, no knocks, no sun.',
    byMethod: {
      'cut-comb-edge': {
        what: 'Cut each cell out with a collar of comb as wide as a thumb. Carry it upright and warm, one into each box. Write which cell went where.',
        caution:
          'Cut away from your hand. Edges with older larvae ripen early: check a day early when in doubt. The first queen out kills the others in their cells.',
      },
      'flat-comb': {
        what: 'Cut the cells apart with a collar of comb. Carry them upright and warm, one into each box. Write which cell went where.',
        caution: 'The ages are mixed: the oldest decides. Cage what you cannot place at once. Cut away from your hand.',
      },
      'emergency-cells': {
        what: 'If you want to share the cells out: cut ripe ones with a collar of comb and put one in each box. Leave one or two in the colony.',
        why: 'Emergency cells are of mixed age. The first queen may be out nine days after the colony lost its own.',
      },
      'swarm-cells': {
        what: 'Cut each cell with a collar of comb, five to six days after it was sealed, and put one in each box. Cage those of unknown age singly, at once.',
        why: 'Swarm cells differ by up to a week in age. One emerged queen destroys the rest or leaves with a swarm.',
      },
      'supersedure-cells': {
        what: 'Better leave them. The colony is replacing its queen by itself, with one to three cells.',
        why: 'A colony that loses these cells may be left without a queen.',
        caution: 'Take one only if another as good stays in the colony.',
      },
    },
  },
  'set-out': {
    what: 'At dusk carry the boxes to their places, doors turned different ways, with a stone, a bush or a colour as a mark for each. Open them.',
    why: 'Bees released at dusk have a night to learn that they live here. By day many would fly home.',
    caution:
      'Choose shade, and keep from paths, neighbours and children’s play. Lift with bent knees and a light on your head, not in your hand.',
  },
  emergence: {
    what: 'Nothing to do. The young queen cuts a ring in the tip of her cell and comes out.',
    why: 'Warmth and the age of the larva decide the hour, so it is a span of days: the first day is for the oldest larva kept warm, the last for the youngest kept cool.',
    caution: 'If cells are still together on the first of these days, share them out or cage them now.',
  },
  'emergence-check': {
    what: 'Open each box briefly and look at the cell: a round lid at the tip means she is out, a hole in the side that the cell was torn down, whole and dark that she is dead or late.',
    why: 'Empty boxes found now can get a cell or a virgin from the reserve, while the bees will still take one.',
    caution: 'Before 11 or after 16 o’clock. Do not hunt for the queen; she is quick, and she may fly.',
  },
  'hands-off-mating': {
    what: 'Do not open, move or turn the boxes. Between 11 and 16 o’clock do not even walk through the row.',
    why: 'The queens make their first flights and fly out to mate. One that finds her box changed is lost, or killed by bees upset at the wrong hour.',
    caution:
      'Food can be topped up from outside in the evening. Watch for wasps and robbers, and narrow the doors if they come.',
  },
  'first-look': {
    what: 'Before 11 or after 16 o’clock, look at one comb in each box: eggs, one to a cell, standing on the floor. Type what you saw; no need to see the queen.',
    why: 'About twelve days after emergence a queen lays in fair weather, in a cool spring up to three weeks. Earlier looks only disturb.',
    caution:
      'A queen not laying yet is shy: close at once when the bees begin to ball around her. Boxes without eggs are looked at again in some days, not given up.',
  },
  'sealed-brood-look': {
    what: 'Look for flat-capped worker brood in a close patch. Mark the queen in the colour of the year, and note her.',
    why: 'Only sealed worker brood proves that she is well mated. Humped caps on worker cells mean drone brood: she is not.',
    caution:
      'Before 11 or after 16 o’clock. Hold her over the open box when marking, let the paint dry, and give her back gently. She should not be caught before she has laid for some days; three to four weeks after emergence is better.',
  },
  'late-warning': {
    what: 'Boxes without eggs by now are late. Look again after every spell of good flying days.',
    why: 'Mating should be over within three weeks of emergence; later it gives fewer eggs and shorter lives. Days on which no queen could fly put this date off, to 30 days at most.',
    caution: 'Bees three to four weeks without brood may begin to lay themselves. Think of a new cell or of uniting.',
  },
  'give-up': {
    what: 'Look for the queen or for eggs a last time. Then give the box a new cell, or unite it with another. Note the reason if you know it.',
    why: 'Four weeks after emergence a queen who does not lay is lost or will not mate. Only after long bad weather is a fifth week worth it.',
    caution:
      'Find and remove a failed queen before you unite. If you saw signs of disease, unite nothing and ask for advice.',
  },
} as const satisfies Record<BoxStep, StepText>;
