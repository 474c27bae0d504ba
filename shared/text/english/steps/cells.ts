import type { Step } from '../../../model/step.ts';
import type { StepText } from './step-words.ts';

type CellStep = Extract<
  Step,
  | 'count-taken'
  | 'move-to-finisher'
  | 'open-divider'
  | 'check-own-cells'
  | 'thin-cells'
  | 'sealed'
  | 'count-sealed'
  | 'hands-off-cells'
>;

export const CELLS = {
  'count-taken': {
    what: 'Lift the bar once. Count how many larvae lie on a bed of jelly with a rim of new wax. Write given and taken for each bar.',
    why: 'One day shows what the bees will raise. Under half: give new larvae in the empty cups today, as a new batch with its own number.',
    caution:
      'A short look, no shaking: bees brush off with a feather or a puff of smoke. Ages are never mixed on one bar without marking.',
    byMethod: {
      'cut-comb-edge': { what: 'Lift the comb once. Count the cells begun along the edge, and write given and taken.' },
      'flat-comb': {
        what: 'Look under the comb from the side. Count the cells begun and note them; more than 20 will be thinned.',
      },
    },
  },
  'move-to-finisher': {
    what: 'Hang the bar between open brood in a strong colony, 15 to 20 cells in each. Give the starter’s bees back by shaking them in front of it.',
    why: 'Shut-in bees can start many cells but feed them well for only a day or two.',
    caution:
      'Destroy the finisher’s own cells first. Put no more than 20 in one finisher: crowded cells make small queens.',
  },
  'open-divider': {
    what: 'Open the slide of the divider board and close the lower rear door. Touch nothing else.',
    why: 'From now on the cells are fed under the scent of the queen below, by a whole colony. Sources say one day or two after the larvae were given.',
    caution: 'The excluder must stay in place: the queen would destroy the cells.',
    byBuilder: {
      'queen-parked-above': {
        title: 'Bring the queen back below',
        what: 'Put the boxes with the queen back at the bottom, an excluder over them, and the cells on top.',
        why: 'The cells are started. Now a whole colony with its queen below feeds them.',
        caution: 'Lift with a second person, and keep the cell box upright and still. Check the excluder for gaps.',
      },
    },
  },
  'check-own-cells': {
    what: 'Shake or brush the bees off every other comb, and destroy all cells on it. Leave the bar alone.',
    why: 'If open brood was left, bees begin cells of their own. One of those could emerge about nine days after the queen went, before yours.',
    caution:
      'Never shake the comb or bar that holds your cells. One cell missed in a corner is enough to lose the whole batch.',
    byBuilder: {
      'queenright-over-excluder': {
        why: 'On combs raised above the excluder bees begin cells of their own. Look five to seven days after each comb was raised.',
      },
    },
  },
  'thin-cells': {
    what: 'Destroy the cells that are sealed already, and keep one or two large open ones, well supplied with jelly, in each unit.',
    why: 'Cells sealed this early were begun over old larvae and make poor queens. And several queens in one colony may leave with a swarm each.',
    caution: 'Mark what you keep, with a pin in the top bar. Do not shake that comb.',
    byMethod: {
      'swarm-cells': {
        what: 'Keep one good cell in the hive that swarmed; take the others for your boxes, or destroy them.',
        why: 'Left alone, a second swarm may leave with the first young queen from about seven days after sealing.',
        caution:
          'Raising queens from swarm cells favours colonies that like to swarm. Cells are moved only when ripe; until then mark them and let them hang.',
      },
    },
  },
  sealed: {
    what: 'Nothing to do. The bees close the cells with wax about eight days after the egg was laid.',
    why: 'The larva has eaten its fill, and spins its cocoon. If you see the day of sealing, note it: it makes all later dates surer.',
    caution: 'A tilted or knocked cell can fall off its food now. Look without lifting the cells.',
  },
  'count-sealed': {
    what: 'Count the closed cells on each bar. Cut joined ones apart or destroy one of each pair. If any larva may have been too old, put the cages on now.',
    why: 'This is the last look before the quiet days. What is sealed now is what you can share out later.',
    caution: 'Keep the bar upright, out of wind and cold, and be quick. From tomorrow the cells must not be moved.',
  },
  'hands-off-cells': {
    what: 'Do not open the builder. No shaking, no turning, no travelling with the cells.',
    why: 'In these days the larva becomes a pupa. Wings and legs form free inside the shell, and a knock or a chill cripples the queen.',
    caution: 'Also keep others away: mowing, moving the hive or lifting its boxes does the same harm.',
  },
} as const satisfies Record<CellStep, StepText>;
