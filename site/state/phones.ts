import { stored, type Stored } from './stored.ts';

/** What a hall's phones open: the same pages, at an address that reaches this computer from outside. */
export interface PhoneAddress {
  readonly address: string;
  /** Only this computer itself reaches it: phones do not. */
  readonly isHereOnly: boolean;
}

/** The address at which phones reach the workbook, where that is not this page's own. */
export const keptHall: Stored<string> = stored<string>({
  key: 'hall',
  words: 'address for phones',
  renewed: 'Type it again.',
  fallback: '',
  isValid: (value): value is string => typeof value === 'string' && value.length <= 200,
});

const hereOnly = /^(?:localhost|127(?:\.\d+){3}|\[::1\]|.+\.localhost)$/;

/**
 * The address of *path* for phones: at *hall*, where the instructor has said how phones reach this computer, else where the page itself is.
 *
 * @param path - within the site: `lessons/extension/?extension=12`
 * @param base - where the site is, as the page knows it: `http://localhost:4321/`
 */
export function phoneAddress(path: string, base: string, hall: string): PhoneAddress {
  const root = new URL(readHall(hall) ?? base);
  // Whoever types the computer alone means the place on it where the page is.
  if (root.pathname === '/') root.pathname = new URL(base).pathname;
  const url = new URL(path, root);
  return { address: url.href, isHereOnly: hereOnly.test(url.hostname) || url.protocol === 'file:' };
}

/**
 * What was typed as the address for phones: `192.168.1.20:4321` is enough. Undefined where it is none.
 *
 * @param port - of the page itself, taken where none is written and the address does not begin with `https`; none by default
 */
export function readHall(typed: string, port = ''): string | undefined {
  const text = typed.trim();
  if (text === '' || /\s/.test(text)) return undefined;
  try {
    const url = new URL(/^https?:\/\//i.test(text) ? text : `http://${text}`);
    if (!/^(?:[a-z0-9-]+\.)*[a-z0-9-]+$|^\[[0-9a-f:]+\]$/i.test(url.hostname)) return undefined;
    // Port 80 is written nowhere but in what was typed.
    const isWritten = /^(?:https?:\/\/)?(?:\[[^\]]*\]|[^:/]*):\d/i.test(text);
    if (!isWritten && url.protocol === 'http:') url.port = port;
    return `${url.origin}${url.pathname.replace(/\/?$/, '/')}`;
  } catch {
    return undefined;
  }
}

/** An address as one reads it out: without what every browser puts before it. */
export const spoken = (address: string): string => address.replace(/^http:\/\//, '');

/** Why phones do not open an *address* that is of this computer alone, and what to do about it. */
export const whyHereOnly = (address: string): string =>
  `Its address, ${spoken(new URL(address).origin)}, is of this computer alone. With all on one network, type the address that the workbook printed “on the same network” into “Address for phones” on the workshop page.`;
