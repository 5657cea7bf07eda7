/** Derived values as JSON: SI units and degrees, full precision, each with its standard uncertainty and its story. */
import { isBelow, listValues } from '../../derive/listing.ts';
import type { Inspection } from '../../inspect.ts';
import { explain } from '../../quantities/explain.ts';
import { isHole } from '../../quantities/value.ts';
import { tellPlace, whereIs } from '../../session/where.ts';

export interface ValuesJson {
  readonly files: readonly {
    readonly path: string;
    /** The program failed over a part of the session, whose values are missing. */
    readonly fault?: true;
    readonly values: readonly ValueJson[];
  }[];
}

interface ValueJson {
  readonly id: string;
  /** Null where it cannot be derived; the story then says why. */
  readonly value: number | null;
  readonly unit: string | null;
  readonly sigma: number | null;
  readonly line: number;
  readonly story: string;
}

/** @param only the id of a value, or of what stands above several; all where it is empty */
export function valuesJson(inspections: readonly Inspection[], only = ''): ValuesJson {
  return {
    files: inspections.map(({ session, derivation }) => ({
      path: session.document.path,
      ...(derivation.whole ? {} : { fault: true as const }),
      values: listValues(derivation)
        .filter(({ id }) => isBelow(id, only))
        .map(({ id, value, place }) => {
          const { line } = whereIs(session, place);
          if (isHole(value)) return { id, value: null, unit: null, sigma: null, line, story: value.hole };
          return {
            id,
            value: value.value,
            unit: value.unit,
            sigma: value.sigma,
            line,
            story: explain(value, tellPlace(session)).join('\n'),
          };
        }),
    })),
  };
}
