import type { DatedStep } from '../../../shared/model/step.ts';

/** Neither done nor dropped: still ahead, or still to be done. */
export const isOpen = (step: DatedStep): boolean => step.doneOn === null && step.droppedOn === null;

/** Work that somebody still has to do. */
export const isOpenJob = (step: DatedStep): boolean => step.kind === 'job' && isOpen(step);

/** Where biology leaves no choice a job cannot be dropped: it is done, or the batch ends without it. */
export const canBeDropped = (step: DatedStep): boolean => isOpenJob(step) && step.hardness !== 'must';
