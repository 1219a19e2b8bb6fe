import type { Hazard } from '../hazard.ts'

/**
 * Not for children under 3: 16 CFR 1501, small parts, which leaves out paper, fabric, yarn, fuzz, elastic and string. The
 * size: whatever goes into a cylinder 31.7 mm wide, Canada Toys Regulations SOR/2011-17, Schedule 1. Foam pads go into it
 * too; they stay below a layer, so that only a lesson for children needs to speak of them. Balloons are left out by the
 * rule: see `balloons`.
 */
export const smallParts: Hazard = {
  name: 'small-parts',
  title: 'Small parts',
  words: [
    'bead',
    'seed bead',
    'gem',
    'rhinestone',
    'jewel',
    'cabochon',
    'crystal',
    'brad',
    'button',
    'wiggle eye',
    'wiggly eye',
    'googly eye',
    'wobbly eye',
    'goggly eye',
    'sequin',
    'pearl',
    'pearl dot',
    'adhesive pearl',
    'half pearl',
    'enamel dot',
    'eyelet',
    'split pin',
    'paper fastener',
    'charm',
    'jingle bell',
    'mini bell',
    'marble',
    'glass pebble',
    'shaker bit',
    'shaker filling',
    'shaker mix',
    'resin gem',
    'resin charm',
    'dried bean',
    'dried pea',
    'mini peg',
    'mini bulb',
    'rivet',
    'stud',
  ],
  forChildren: ['foam pad', 'foam dot', 'foam square'],
  not: [
    'button cell',
    'button battery',
    'buttonhole',
    'button hole',
    'button twine',
    'magnetic button',
    'eyelet setter',
    'eyelet tool',
    'eyelet pliers',
    'eyelet punch',
    'brad setter',
    'pearl powder',
    'pearl pen',
    'pearl ink',
    'pearl white',
    'pearl card',
    'marble paper',
    'gem picker',
    'jewel picker',
    'jewel tone',
    'bead wire',
  ],
  pictured: true,
  also: ['choke', 'choking', 'swallow', 'swallowed'],
  caution:
    'Small parts can choke a child under 3. Put none on a card for one so young, keep them in a dish with a lid, and pick up at once what falls.',
  children: 'An adult counts them out and counts them in again.',
}

/** From memory. */
export const magnets: Hazard = {
  name: 'magnets',
  title: 'Magnets',
  words: [
    'magnet',
    'disc magnet',
    'mini magnet',
    'neodymium magnet',
    'magnetic closure',
    'magnetic clasp',
    'magnetic snap',
    'magnetic button',
    'magnetic dot',
  ],
  not: ['magnet sheet', 'magnetic sheet', 'magnetic mat'],
  caution:
    'Two magnets that are swallowed pull together inside the body and do grave harm. Count them before and after, seal each one in under glued card, keep them from anyone with a pacemaker, and go to a hospital at once if one may have been swallowed.',
  children:
    'An adult keeps them, puts them in and checks that none comes loose; none for a young child’s card.',
}

/** From memory. */
export const buttonCells: Hazard = {
  name: 'button-cells',
  title: 'Button cells',
  words: [
    'button cell',
    'button battery',
    'coin cell',
    'coin battery',
    'lithium cell',
    'LED candle',
    'LED tea light',
    'LED tealight',
    'LED light',
    'battery candle',
    'battery tea light',
    'battery tealight',
    'electric tea light',
    'fairy light',
    'sound module',
    'music module',
    'CR1216',
    'CR1220',
    'CR1616',
    'CR1620',
    'CR2016',
    'CR2025',
    'CR2032',
    'CR2450',
    'LR41',
    'LR44',
    'AG13',
  ],
  also: ['cell', 'battery'],
  caution:
    'A button cell that is swallowed burns through the gullet within hours. Close its holder so that no child can open it, count new and used cells, put tape over a used one, and go to a hospital at once if one may have been swallowed.',
  children: 'An adult keeps the cells and puts them in; none for a young child’s card.',
}

/** That a balloon or a piece of one can choke, and holds latex: from memory. */
export const balloons: Hazard = {
  name: 'balloons',
  title: 'Balloons',
  words: ['balloon', 'latex balloon', 'water balloon', 'balloon rubber'],
  not: ['foil balloon', 'hot air balloon', 'hot-air balloon'],
  pictured: true,
  caution:
    'An empty balloon or a piece of a burst one can choke a child, and most are latex, to which some people are allergic. Pick up every piece, and ask about allergies before the class.',
  children: 'An adult blows balloons up and keeps the empty ones.',
}
