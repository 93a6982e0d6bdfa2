/** A tube that is trimmed gets shorter: what is left is told each time, until only a new one remains. */
import { expect, it } from 'vitest';
import { demoTalk, talkIn } from '../support/talk.ts';

it('each trim says what is left, and the last one that a new tube comes next', async () => {
  const talk = await talkIn(
    'workshop: {name: Test, zone: Europe/Copenhagen}\nmachines:\n  - {name: Oak, build: {feed: bowden, tubeLengthMm: 420, tubeNeededMm: 408}}\n',
  );
  expect(await talk.hear('trimmed the tube on oak')).toContain(
    'tube trimmed: about 415 mm left, 1 more trim\n',
  );
  talk.later(600);
  expect(await talk.hear('trimmed the tube on oak')).toContain(
    'tube trimmed: about 410 mm left, the next bad end means a new tube',
  );
});

it('by the machine’s own sheet, and where the sheet states no length nothing is made up', async () => {
  const talk = await demoTalk();
  expect(await talk.hear('trimmed the tube on birch')).toMatch(
    /tube trimmed: about \d+ mm left, \d+ more trims/u,
  );
  const plain = await talkIn(
    'workshop: {name: Test, zone: Europe/Copenhagen}\nmachines:\n  - {name: Oak, build: {feed: bowden}}\n',
  );
  expect(await plain.hear('trimmed the tube on oak')).toContain('tube trimmed\n');
});
