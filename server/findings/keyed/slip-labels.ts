/** A slip in the few words that a headline has room for. */
import type { SlipName } from '../../slips/slip.ts';

const LABELS: Partial<Readonly<Record<SlipName, string>>> = {
  'extension-left-out': 'extension left out',
  'extension-twice': 'extension counted twice',
  'extension-inside-slant': 'extension added to the slope',
  'slope-not-reduced': 'slope not taken off',
  'vertical-told-as-slant': 'plumb reading taken as a slope',
  'rise-forgotten': 'tape point not reduced to ARP',
  'phase-centre-for-arp': 'phase centre for ARP',
  'arp-for-phase-centre': 'ARP for phase centre',
  'orthometric-for-ellipsoidal': 'orthometric height keyed',
  'chart-for-ellipsoidal': 'height above another surface keyed',
  'separation-sign': 'separation subtracted',
  'separation-twice': 'separation added twice',
  'millimetres-for-metres': 'millimetres for metres',
  feet: 'feet and metres mixed up',
  'feet-and-inches-as-decimals': 'inches taken as decimals',
  'survey-feet': 'wrong kind of feet',
  'digits-swapped': 'digits swapped',
  'east-north-swapped': 'axes swapped',
  zone: 'wrong zone',
  hemisphere: 'wrong hemisphere',
  'wrong-mark': 'another mark',
  datum: 'wrong datum',
  epoch: 'wrong epoch',
  'yesterdays-coordinates': 'numbers of another day',
};

/** Empty where there is none. */
export const slipLabel = (name: SlipName) => LABELS[name] ?? '';

/** What names a mark, a datum, a day or digits is not said whole by its label. */
const SAID_WHOLE: readonly SlipName[] = [
  'extension-left-out',
  'extension-twice',
  'extension-inside-slant',
  'slope-not-reduced',
  'vertical-told-as-slant',
  'rise-forgotten',
  'phase-centre-for-arp',
  'arp-for-phase-centre',
  'orthometric-for-ellipsoidal',
  'separation-sign',
  'separation-twice',
  'millimetres-for-metres',
  'feet',
  'east-north-swapped',
  'hemisphere',
];
/** Of a height the numbers themselves show which digits were swapped. */
export const hasMoreToSay = (name: SlipName, ofHeight: boolean) =>
  !SAID_WHOLE.includes(name) && !(ofHeight && name === 'digits-swapped');
