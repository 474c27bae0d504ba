import { z } from 'zod';
import type { PrintSetup } from '../../../shared/contract/print.ts';
import { LABEL_SHEETS, type LabelSheet } from '../../../shared/model/label-sheet.ts';
import { OwnLabelSheet } from '../../../shared/model/own-label-sheet.ts';
import { Printer } from '../../../shared/model/printer.ts';
import type { Tables } from '../../workbook/workbook.ts';

const SHEETS = 'ownLabelSheets';
const PRINTERS = 'printers';

/** The person's own sheets and measured printers; what does not fit (any longer) is left out. */
export function storedSetup({ settings }: Pick<Tables, 'settings'>): PrintSetup {
  const list = <Item>(key: string, item: z.ZodType<Item>): readonly Item[] => {
    const stored = z.array(z.unknown()).safeParse(settings.get(key));
    return (stored.data ?? []).flatMap((one) => {
      const read = item.safeParse(one);
      return read.success ? [read.data] : [];
    });
  };
  return { sheets: list(SHEETS, OwnLabelSheet), printers: list(PRINTERS, Printer) };
}

export function keepSheets({ settings }: Pick<Tables, 'settings'>, sheets: PrintSetup['sheets']): void {
  settings.put(SHEETS, sheets);
}

export function keepPrinters({ settings }: Pick<Tables, 'settings'>, printers: PrintSetup['printers']): void {
  settings.put(PRINTERS, printers);
}

/** A sheet by its key, whether it came with the program or from the person; null when there is none. */
export const sheetByKey = (tables: Tables, key: string): LabelSheet | null =>
  [...LABEL_SHEETS, ...storedSetup(tables).sheets].find((sheet) => sheet.key === key) ?? null;

export const printerByName = (tables: Tables, name: string | null): Printer | null =>
  storedSetup(tables).printers.find((printer) => printer.name === name) ?? null;
