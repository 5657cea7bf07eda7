/** Between the addresses that a client uses for files and the paths that sessions speak of, with `/` between folders. */

const FILE = 'file://';

/** A file's path, `/c:/jobs/day.trib` where drives have letters; any other address stays whole. */
export function pathOf(address: string): string {
  return decoded(address.startsWith(FILE) ? address.slice(FILE.length) : address);
}

export function addressOf(path: string): string {
  const scheme = /^[a-z][a-z0-9+.-]*:/i.exec(path)?.[0] ?? '';
  const parts = path.slice(scheme.length).split('/').map(encodeURIComponent);
  return (scheme === '' ? FILE : scheme) + parts.join('/');
}

/** Clients differ in what they encode; what is encoded badly is taken as it stands. */
function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
