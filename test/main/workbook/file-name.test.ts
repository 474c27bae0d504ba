import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileNameOf } from '../../../main/workbook/file-name.ts';

test.each([
  ['Queens 2026', 'Queens 2026.ripecell'],
  ['Königinnen – Hochstand', 'Königinnen – Hochstand.ripecell'],
  ['a/b\\c:d*e?f"g<h>i|j', 'a b c d e f g h i j.ripecell'],
  ['../../etc/passwd', 'etc passwd.ripecell'],
  ['...', 'Workbook.ripecell'],
  ['CON', 'CON workbook.ripecell'],
  ['lpt1', 'lpt1 workbook.ripecell'],
  ['ends with a dot. ', 'ends with a dot.ripecell'],
])('%j becomes the file %j', (name, file) => {
  expect(fileNameOf(name)).toBe(file);
});

test('no name, however odd, leads out of its folder or is too long for a file system', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (name) => {
      const file = fileNameOf(name);
      expect(file).toMatch(/^[^/\\\0:]+\.ripecell$/u);
      expect(file.startsWith('.')).toBe(false);
      // 255 bytes is the limit of ext4; APFS and NTFS are not stricter (from memory).
      expect(Buffer.byteLength(file)).toBeLessThanOrEqual(200);
    }),
  );
});
