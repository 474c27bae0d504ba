/** The structure types of ISO 32000-1, 14.8.4, that our papers use. */
export type PartType = 'H1' | 'H2' | 'P' | 'L' | 'LI' | 'LBody' | 'Table' | 'TR' | 'TH' | 'TD' | 'Figure' | 'Sect';

export interface PartNotes {
  /** What a picture shows, in words. */
  readonly alt?: string;
  /** Whether a head cell speaks for its column or its row. */
  readonly scope?: 'Column' | 'Row';
}

/** One part of a paper that a reading program can name; holds words, or further parts. */
export interface Part {
  /** A part inside this one, to be filled later. */
  inside(type: PartType, notes?: PartNotes): Part;
  /** A part inside this one with what is drawn now. */
  draw(type: PartType, draw: () => void, notes?: PartNotes): void;
}

/** Draws as a part where it is to be read aloud here, else as an ornament, such as a heading said again on the next page. */
export function drawOnce(
  pdf: PDFKit.PDFDocument,
  part: Part | null,
  type: PartType,
  draw: () => void,
  notes: PartNotes = {},
): void {
  if (part) part.draw(type, draw, notes);
  else asOrnament(pdf, draw);
}

type Element = PDFKit.PDFStructureElement;

/** The root of a tagged paper: parts are read in the order in which they are added, whatever their place on the page. */
export function taggedParts(pdf: PDFKit.PDFDocument): Part & { close(): void } {
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  return { ...partOf(pdf, root), close: () => root.end() };
}

function partOf(pdf: PDFKit.PDFDocument, element: Element): Part {
  return {
    inside: (type, notes = {}) => {
      const child = pdf.struct(type, notes);
      element.add(child);
      return partOf(pdf, child);
    },
    draw: (type, draw, notes = {}) => {
      const content = pdf.markStructureContent(type);
      draw();
      pdf.endMarkedContent();
      element.add(pdf.struct(type, notes, [content]));
    },
  };
}

/** Rules, page numbers and other things that nobody wants read aloud. */
export function asOrnament(pdf: PDFKit.PDFDocument, draw: () => void): void {
  pdf.markContent('Artifact', {});
  draw();
  pdf.endMarkedContent();
}
