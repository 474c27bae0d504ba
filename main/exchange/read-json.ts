import type { FileTrouble } from '../../shared/contract/import.ts';
import { ok, type Result, refuse } from '../../shared/kernel/result.ts';
import { decodeText } from './decode-text.ts';
import { FILE_LIMITS } from './file-limits.ts';

/** The value of a JSON file within the limits: size and depth are looked at before it is taken apart. */
export function readJson(bytes: Uint8Array): Result<unknown, FileTrouble> {
  if (bytes.length > FILE_LIMITS.bytes) return refuse({ reason: 'too-large', limit: FILE_LIMITS.bytes });
  const text = decodeText(bytes).replace(/^\ufeff/, '');
  if (depthOf(text) > FILE_LIMITS.jsonDepth) return refuse({ reason: 'too-deep', limit: FILE_LIMITS.jsonDepth });
  try {
    return ok(JSON.parse(text) as unknown);
  } catch {
    return refuse({ reason: 'not-json' });
  }
}

/** How many lists and objects stand inside one another at most; brackets within texts do not count. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let inText = false;
  for (let index = 0; index < text.length; index += 1) {
    const sign = text.charCodeAt(index);
    if (inText) {
      if (sign === BACKSLASH) index += 1;
      else if (sign === QUOTE) inText = false;
    } else if (sign === QUOTE) inText = true;
    else if (sign === BRACKET || sign === BRACE) {
      depth += 1;
      deepest = Math.max(deepest, depth);
    } else if (sign === BRACKET_CLOSED || sign === BRACE_CLOSED) depth -= 1;
  }
  return deepest;
}

const [QUOTE, BACKSLASH, BRACKET, BRACKET_CLOSED, BRACE, BRACE_CLOSED] = [34, 92, 91, 93, 123, 125];
