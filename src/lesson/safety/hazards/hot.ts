import type { Hazard } from '../hazard.ts'

/**
 * That a burn is cooled under water: school safety sheet on the glue gun, January 2018. How hot craft tools get: common
 * practice, no source found.
 */
export const heat: Hazard = {
  name: 'heat',
  title: 'Hot tools',
  words: [
    'heat tool',
    'heat gun',
    'heat-embossing tool',
    'heat embossing gun',
    'embossing heat tool',
    'embossing gun',
    'hot air gun',
    'soldering iron',
    'clothes iron',
    'craft iron',
    'mini iron',
    'travel iron',
    'steam iron',
    'dry iron',
    'hot iron',
    'warm iron',
    'cool iron',
    'flat iron',
    'pyrography pen',
    'wood burner',
    'burning tool',
    'hot foil pen',
    'hot foil machine',
    'hot knife',
    'laminator',
    'melting pot',
    'hot plate',
    'heat press',
  ],
  alone: ['iron'],
  also: ['heat', 'hot', 'burn', 'scorch'],
  caution:
    'A hot tool burns skin and scorches paper, and it looks the same when it is cold. Work on a surface that takes heat, with hands, sleeves and loose paper out of the way, put it on its rest, and switch it off and let it cool before it is packed. Hold a burn under cold water at once.',
  children: 'An adult holds the hot tool, and the children stand back until all is cold.',
}

/**
 * Any setting burns, and the teacher shows it and watches over it: NSTA Science Scope, October 2010. Eye protection, nozzle
 * down in its stand, a covered table, cold water at hand, a stick and never a finger to spread it, water and medical help
 * for a burn: school safety sheet on the glue gun, January 2018. That stuck glue is left in place: from memory.
 */
export const hotGlue: Hazard = {
  name: 'hot-glue',
  title: 'Hot glue',
  words: ['glue gun', 'hot glue gun', 'hot glue', 'hot-melt glue', 'hot glue stick', 'hot melt gun'],
  also: ['nozzle'],
  caution:
    'The nozzle and the glue burn at any setting. Protect the eyes, stand the gun nozzle down in its rest on a covered table, and spread the glue with a stick, never with a finger. Have cold water at hand: hold a burn under it, leave glue that sticks to the skin where it is, and get medical help.',
  children: 'An adult works the gun, and the children keep away from fresh glue.',
}

/** Common practice, no source. */
export const flames: Hazard = {
  name: 'flames',
  title: 'Flames',
  words: [
    'candle',
    'tea light',
    'tealight',
    'matchstick',
    'box of matches',
    'cigarette lighter',
    'gas lighter',
    'candle lighter',
    'barbecue lighter',
    'gas torch',
    'naked flame',
    'open flame',
    'sealing wax',
    'incense stick',
    'sparkler',
  ],
  alone: ['match', 'lighter'],
  not: [
    'LED candle',
    'LED tea light',
    'LED tealight',
    'battery candle',
    'battery tea light',
    'battery tealight',
    'electric candle',
    'electric tea light',
  ],
  pictured: true,
  also: ['flame', 'fire', 'burn'],
  caution:
    'Paper, hair and sleeves catch fire in a moment. Light nothing near loose paper, film or spray, keep water beside it, never leave a flame alone, and put none in or under a finished card.',
  children: 'An adult lights it, stays with it and puts it out.',
}
