import type { PrintSetup } from '../../../shared/contract/print.ts';
import type { Desk } from '../operation.ts';
import { storedSetup } from './print-setup.ts';

/** The person's own label sheets and the printers measured so far. */
export const getPrintSetup = ({ workbook }: Desk): PrintSetup => storedSetup(workbook.tables);
