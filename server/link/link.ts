/** A radio link as the correction stream sees it: how long a piece of data takes, and how large a packet may be. */
import type { Bytes, Seconds } from '../quantities/brands.ts';
import { bytes, seconds } from '../quantities/brands.ts';

export interface Link {
  /** The largest packet; absent where a burst goes out in one piece. */
  readonly largestPacket?: Bytes;
  /** Time on the air of one packet of this many bytes. */
  readonly airtime: (packet: Bytes) => Seconds;
}

/** Time on the air of a burst, cut into packets as large as the link takes. */
export function burstAirtime(link: Link, burst: Bytes): Seconds {
  const largest = link.largestPacket;
  if (burst <= 0) return seconds(0);
  if (largest === undefined || burst <= largest) return link.airtime(burst);
  const full = Math.floor(burst / largest);
  const rest = burst - full * largest;
  return seconds(full * link.airtime(largest) + (rest > 0 ? link.airtime(bytes(rest)) : 0));
}

/** Packets that a burst is cut into. */
export function packetCount(link: Link, burst: Bytes): number {
  if (burst <= 0) return 0;
  return link.largestPacket === undefined ? 1 : Math.ceil(burst / link.largestPacket);
}

/** When, from the start of a burst, its first `part` bytes have arrived whole: at the end of the packet they end in. */
export function arrivalInBurst(link: Link, burst: Bytes, part: Bytes): Seconds {
  const largest = link.largestPacket;
  return burstAirtime(
    link,
    largest === undefined ? part : bytes(Math.min(burst, Math.ceil(part / largest) * largest)),
  );
}
