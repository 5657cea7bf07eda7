/** Grid coordinates in US survey feet are taken for international feet, or the other way round. */
import { FOOT } from './feet.ts';
import { toldGrid } from './grid-told.ts';
import type { Slip } from './slip.ts';

/** 1200/3937 m; withdrawn 31 December 2022 (85 FR 62698). */
const SURVEY_FOOT = 1200 / 3937;

export const surveyFeet: Slip = {
  name: 'survey-feet',
  code: 'unit/feet',
  prior: 0.02,
  look: 'which of the two feet receiver and register use',
  ways: ({ right: { grid } }) => {
    if (!grid) return [];
    const { system, east, north } = grid;
    return [
      ...toldGrid(
        system,
        (east * SURVEY_FOOT) / FOOT,
        (north * SURVEY_FOOT) / FOOT,
        'coordinates in international feet were taken for US survey feet',
      ),
      ...toldGrid(
        system,
        (east * FOOT) / SURVEY_FOOT,
        (north * FOOT) / SURVEY_FOOT,
        'coordinates in US survey feet were taken for international feet',
      ),
    ];
  },
};
