import { expect, test } from 'vitest'

test('the public names of the library', async () => {
  expect(Object.keys(await import('../src/index.ts')).sort()).toEqual([
    'closingAdvice',
    'drawFigure',
    'fillLesson',
    'fixLesson',
    'foldFile',
    'foldStyles',
    'hasErrors',
    'kitJson',
    'kitListing',
    'listingMarkdown',
    'listingText',
    'makeKit',
    'measures',
    'measuresListing',
    'publishHandout',
    'readLength',
    'readLesson',
    'readSize',
    'resizeLesson',
    'starterLesson',
    'tieLesson',
  ])
})
