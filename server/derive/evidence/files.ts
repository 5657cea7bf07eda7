/** What was recorded, read from the files that the notes name: of setups, and of checks. */
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { foundInEach } from '../../session/each.ts';
import type { Check, Quoted, Rover } from '../../session/entries.ts';
import { resolvePath, type Files } from '../../session/files.ts';
import type { Session } from '../../session/session.ts';
import { recordingValues, type RecordingValues } from './recording.ts';
import type { Frame } from '../positions/frame.ts';
import { interned, NOTHING, orNull, remembered, sameRefusal, type Nothing } from '../remembered.ts';
import { withEvidence, type SetupValues } from '../setups/setup.ts';

/** Setups with what was recorded of them. */
export function withRecords(
  noted: readonly SetupValues[],
  frame: Frame,
  files: Files,
): readonly SetupValues[] {
  if (recordedIn(noted).length === 0) return noted;
  const evidence = (file: Quoted | null) => (file ? bytesOf(file, files) : NOTHING);
  const setups = noted.map((values) => {
    const { captured, rawLog, ephemerides } = values.setup;
    return captured || rawLog
      ? recordedSetup(
          values,
          evidence(captured),
          evidence(rawLog),
          evidence(rawLog ? ephemerides : null),
          frame,
        )
      : values;
  });
  return interned(setups);
}
const recordedIn = foundInEach((values: SetupValues) =>
  values.setup.captured || values.setup.rawLog ? [values] : [],
);

export type Recordings = ReadonlyMap<Check, RecordingValues>;

/** What was recorded of checks; the same table for the same checks and contents. */
export function recordingsOf({ checks, rovers }: Session, frame: Frame, files: Files): Recordings {
  const logged = loggedIn(checks);
  const recordings = logged.map((check) => {
    const file = check.observed?.recording?.file;
    const rover = check.by ? rovers.get(check.by.name) : undefined;
    return file ? recordingOf(check, bytesOf(file, files), rover ?? NOTHING, frame) : NOTHING;
  });
  return recordingTable(interned(logged), interned(recordings));
}
const loggedIn = foundInEach((check: Check) => (check.observed?.recording ? [check] : []));
const recordingTable = remembered(
  (checks: readonly Check[], recordings: readonly (RecordingValues | Nothing)[]): Recordings =>
    new Map(
      checks.flatMap((check, index) => {
        const recording = orNull<RecordingValues>(recordings[index] ?? NOTHING);
        return recording ? [[check, recording]] : [];
      }),
    ),
);

/** The bytes of a recording, or a refusal that is the same object for the same reason. */
export function bytesOf({ text, place }: Quoted, files: Files): Uint8Array | Refusal {
  const bytes = files.bytes(resolvePath(place.path, text));
  return isRefusal(bytes) ? sameRefusal(bytes) : bytes;
}

const recordedSetup = remembered(
  (
    setup: SetupValues,
    captured: Uint8Array | Refusal | Nothing,
    rawLog: Uint8Array | Refusal | Nothing,
    ephemerides: Uint8Array | Refusal | Nothing,
    frame: Frame,
  ): SetupValues =>
    withEvidence(
      setup,
      orNull<Uint8Array | Refusal>(captured),
      orNull<Uint8Array | Refusal>(rawLog),
      orNull<Uint8Array | Refusal>(ephemerides),
      frame,
    ),
);
const recordingOf = remembered(
  (
    check: Check,
    log: Uint8Array | Refusal | Nothing,
    rover: Rover | Nothing,
    frame: Frame,
  ): RecordingValues | Nothing => {
    const recording = check.observed?.recording;
    const bytes = orNull<Uint8Array | Refusal>(log);
    return recording && bytes
      ? recordingValues(check, recording, bytes, orNull<Rover>(rover), frame)
      : NOTHING;
  },
);
