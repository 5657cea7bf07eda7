/** What writes points into a file, one after the other. */
import type { RepairedPoint } from '../../derive/repair/row.ts';
import type { FileText } from '../file-text.ts';

export interface PointsWriter {
  readonly head: string;
  readonly row: (point: RepairedPoint, into: FileText) => void;
  readonly tail: string;
}
