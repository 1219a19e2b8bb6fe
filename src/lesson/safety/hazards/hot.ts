import type { Hazard } from '../hazard.ts'

/**
 * That a burn is cooled under water: school safety sheet on the glue gun, January 2018. How hot craft tools get: common
 * practice, no source found.
 */
export const heat: Hazard = {
  name: 'heat',
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
}

/**
 * Any setting burns, and the teacher shows it and watches over it: NSTA Science Scope, October 2010. Eye protection, nozzle
 * down in its stand, a covered table, cold water at hand, a stick and never a finger to spread it, water and medical help
 * for a burn: school safety sheet on the glue gun, January 2018. That stuck glue is left in place: from memory.
 */
export const hotGlue: Hazard = {
  name: 'hot-glue',
  words: ['glue gun', 'hot glue gun', 'hot glue', 'hot-melt glue', 'hot glue stick', 'hot melt gun'],
  also: ['nozzle'],
}

/** Common practice, no source. */
export const flames: Hazard = {
  name: 'flames',
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
}
