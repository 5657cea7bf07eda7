/** Digits in groups are the same digits. */
import { describe, expect, it } from 'vitest';
import { digitGroups } from './digit-groups.ts';

describe('digits in groups', () => {
  it.each([
    ['61.201 m', ['61.201 m']],
    ['4755149.1553 m', ['4', '755', '149.155', '3 m']],
    ['−721183.1676 m', ['−721', '183.167', '6 m']],
    [`41°09'08.18286"N`, [`41°09'08.182`, '86"N']],
    ['choke ring, serial 0413123', ['choke ring, serial 0413123']],
    ['ETRS89', ['ETRS89']],
  ])('of %s', (text, groups) => {
    expect(digitGroups(text)).toEqual(groups);
    expect(digitGroups(text).join('')).toBe(text);
  });
});
