import { describe, expect, it } from 'vitest';
import { cardPlaces } from '../../src/app/desk/card-places';
import { partOf } from '../../src/engine/parts';

describe('the parts of a machine', () => {
  it('hold every place that any check or the card keeps', async () => {
    const homeless = (await cardPlaces()).map(({ place }) => place).filter((place) => partOf(place) === undefined);
    expect(homeless, 'say in engine/parts.ts which part these belong to').toEqual([]);
  });
});
