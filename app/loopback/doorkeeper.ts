import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders, IncomingMessage } from 'node:http';

const KEY_LIFE_MILLISECONDS = 60_000;

/** Says who may come in: the right host, one first visit with the one-time key, then the cookie given for it. */
export class Doorkeeper {
  readonly origin: string;
  readonly oneTimeKey = randomBytes(32).toString('hex');
  readonly cookieName: string;
  readonly #host: string;
  readonly #cookie = randomBytes(32).toString('hex');
  readonly #startedAt: number;
  readonly #now: () => number;
  #keySpent = false;

  /** `now` in milliseconds of a clock that only goes forward. */
  constructor(port: number, now: () => number) {
    this.#host = `127.0.0.1:${port}`;
    this.origin = `http://${this.#host}`;
    this.cookieName = `ripecell_${port}`;
    this.#now = now;
    this.#startedAt = now();
  }

  /** Exactly one Host header and it is ours: a page of another name that points here is turned away. */
  isOurHost(request: IncomingMessage): boolean {
    const hosts = request.headersDistinct.host;
    return hosts?.length === 1 && hosts[0] === this.#host;
  }

  /** The page's own requests say they come from the page; a link typed or opened by the system says "none". */
  isFromOurPage(headers: IncomingHttpHeaders, changing: boolean): boolean {
    const site = headers['sec-fetch-site'];
    if (site !== undefined && site !== 'same-origin' && (changing || site !== 'none')) return false;
    if (headers.origin === undefined) return !changing;
    return headers.origin === this.origin;
  }

  /** True once, within a minute of the start, for the right key. */
  spendKey(key: string): boolean {
    const inTime = this.#now() - this.#startedAt < KEY_LIFE_MILLISECONDS;
    if (this.#keySpent || !inTime || !sameText(key, this.oneTimeKey)) return false;
    this.#keySpent = true;
    return true;
  }

  setCookie(): string {
    return `${this.cookieName}=${this.#cookie}; HttpOnly; SameSite=Strict; Path=/`;
  }

  hasCookie(headers: IncomingHttpHeaders): boolean {
    const given = (headers.cookie ?? '').split(';').flatMap((pair) => {
      const [name, value] = pair.trim().split('=');
      return name === this.cookieName && value !== undefined ? [value] : [];
    });
    return given.length === 1 && given.every((value) => sameText(value, this.#cookie));
  }
}

/** Compares without telling by its time how much was right. */
function sameText(a: string, b: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(a), digest(b));
}
