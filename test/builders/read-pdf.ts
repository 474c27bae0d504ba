import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A PDF read back by a reader that had no hand in writing it. All in millimetres from the page's upper left corner. */
export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly title: string | undefined;
  readonly printScaling: unknown;
  /** Scripts, links, form fields and attachments: all that a plain print must not hold. */
  readonly activeParts: readonly string[];
  /** What a reading program says, in its order: kind of part and its words, or what a picture shows. Empty when untagged. */
  readonly spoken: readonly (readonly [role: string, words: string])[];
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly ReadText[];
  readonly codes: readonly ReadCode[];
}

export interface ReadText {
  readonly text: string;
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly width: number;
  readonly points: number;
  /** Upright, unmirrored. */
  readonly upright: boolean;
  /** Whether a reading program says it, passes it over as an ornament, or is told nothing of it (ISO 32000-1, 14.8.2.2). */
  readonly marked: 'part' | 'ornament' | 'none';
}

/** A one-bit picture as it lies on the page: `dark[row][column]` counted from its upper left corner on paper. */
export interface ReadCode {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly dark: readonly (readonly boolean[])[];
}

type Matrix = readonly [number, number, number, number, number, number];
const MILLIMETRES = 25.4 / 72;

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const reading = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await reading.promise;
  const activeParts: string[] = [];
  if (await document.getJSActions()) activeParts.push('script');
  if (await document.getAttachments()) activeParts.push('attachment');
  if (await document.getOpenAction()) activeParts.push('open action');
  const pages: ReadPage[] = [];
  const spoken: (readonly [string, string])[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    if ((await page.getAnnotations()).length > 0) activeParts.push(`annotation on page ${number}`);
    pages.push(await readPage(page));
    spoken.push(...(await readAloud(page)));
  }
  const { info } = await document.getMetadata();
  const title = (info as { readonly Title?: string }).Title;
  const preferences: unknown = await document.getViewerPreferences();
  const printScaling = preferences instanceof Map ? preferences.get('PrintScaling') : undefined;
  await reading.destroy();
  return { pages, title, printScaling, activeParts, spoken };
}

type PdfPage = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

interface StructNode {
  readonly role?: string;
  readonly alt?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly StructNode[];
}

/** Walks the structure tree; words belong to the part whose marked content they stand in. */
async function readAloud(page: PdfPage): Promise<readonly (readonly [string, string])[]> {
  const tree = (await page.getStructTree()) as StructNode | null;
  if (!tree) return [];
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const words = new Map<string, string>();
  let open: string | null = null;
  for (const item of items) {
    if ('str' in item) {
      if (open !== null) words.set(open, `${words.get(open) ?? ''} ${item.str}`);
    } else open = item.type === 'beginMarkedContentProps' ? item.id : null;
  }
  const walk = (node: StructNode): readonly (readonly [string, string])[] => {
    const own = (node.children ?? []).filter(({ type }) => type === 'content');
    const text = own.map(({ id }) => words.get(id ?? '') ?? '').join(' ');
    const said = own.length > 0 ? [[node.role ?? '', (node.alt ?? text).replace(/\s+/g, ' ').trim()] as const] : [];
    return [...said, ...(node.children ?? []).flatMap((child) => (child.type ? [] : walk(child)))];
  };
  return walk(tree);
}

async function readPage(page: PdfPage): Promise<ReadPage> {
  const [, , widthInPoints = 0, heightInPoints = 0] = page.view;
  const height = heightInPoints * MILLIMETRES;
  const content = await page.getTextContent({ includeMarkedContent: true });
  const open: ReadText['marked'][] = [];
  const texts = content.items.flatMap((item) => {
    if (!('str' in item)) {
      if (item.type === 'endMarkedContent') open.pop();
      else open.push((item as { readonly tag?: string }).tag === 'Artifact' ? 'ornament' : 'part');
      return [];
    }
    if (item.str.trim() === '') return [];
    const [a, b, c, d, e, f] = item.transform as number[] as unknown as Matrix;
    const upright = a > 0 && b === 0 && c === 0 && d > 0;
    return [
      {
        text: item.str,
        x: e * MILLIMETRES,
        y: height - f * MILLIMETRES,
        width: item.width * MILLIMETRES,
        points: d,
        upright,
        marked: open.at(-1) ?? ('none' as const),
      },
    ];
  });
  return { width: widthInPoints * MILLIMETRES, height, texts, codes: await readCodes(page, height) };
}

/** Follows the drawing operators to every one-bit picture and where it comes to lie. */
async function readCodes(page: PdfPage, pageHeight: number): Promise<readonly ReadCode[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const codes: ReadCode[] = [];
  const kept: Matrix[] = [];
  let at: Matrix = [1, 0, 0, 1, 0, 0];
  for (const [index, operator] of fnArray.entries()) {
    if (operator === OPS.save) kept.push(at);
    else if (operator === OPS.restore) at = kept.pop() ?? at;
    else if (operator === OPS.transform) at = times(at, argsArray[index] as Matrix);
    else if (operator === OPS.paintImageMaskXObject) {
      const [mask] = argsArray[index] as [{ readonly data: string; readonly width: number }];
      const { data } = page.objs.get(mask.data) as { readonly data: Uint8Array };
      codes.push(onPaper(data, mask.width, at, pageHeight));
    }
  }
  return codes;
}

const times = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + c * B,
  b * A + d * B,
  a * C + c * D,
  b * C + d * D,
  a * E + c * F + e,
  b * E + d * F + f,
];

/** A picture fills the unit square, its first row at the top (PDF 32000-1, 8.9.5); a mask paints where its bit is 0. */
function onPaper(data: Uint8Array, size: number, [a, b, c, d, e, f]: Matrix, pageHeight: number): ReadCode {
  const corners = [0, 1].flatMap((u) => [0, 1].map((v) => [a * u + c * v + e, b * u + d * v + f] as const));
  const left = Math.min(...corners.map(([x]) => x));
  const top = Math.max(...corners.map(([, y]) => y));
  const width = Math.max(...corners.map(([x]) => x)) - left;
  const height = top - Math.min(...corners.map(([, y]) => y));
  const rowBytes = Math.ceil(size / 8);
  const dark = Array.from({ length: size }, () => new Array<boolean>(size).fill(false));
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < size; column += 1) {
      const [u, v] = [(column + 0.5) / size, 1 - (row + 0.5) / size];
      const paperColumn = Math.floor(((a * u + c * v + e - left) / width) * size);
      const paperRow = Math.floor(((top - (b * u + d * v + f)) / height) * size);
      const bit = ((data[row * rowBytes + (column >> 3)] ?? 0) >> (7 - (column & 7))) & 1;
      const line = dark[paperRow];
      if (line) line[paperColumn] = bit === 0;
    }
  return {
    x: left * MILLIMETRES,
    y: pageHeight - top * MILLIMETRES,
    width: width * MILLIMETRES,
    height: height * MILLIMETRES,
    dark,
  };
}
