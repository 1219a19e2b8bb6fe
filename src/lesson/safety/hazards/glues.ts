import type { Hazard } from '../hazard.ts'

/** Good ventilation: NSEAD, adhesives and fixatives. That what comes out burns, and the face: common practice, no source. */
export const sprays: Hazard = {
  name: 'sprays',
  words: [
    'spray adhesive',
    'spray glue',
    'spray mount',
    'spray fixative',
    'spray varnish',
    'spray sealer',
    'spray paint',
    'adhesive spray',
    'fixative spray',
    'varnish spray',
    'spray can',
    'aerosol',
    'fixative',
    'glitter spray',
    'hair spray',
    'hairspray',
    'repositionable spray',
  ],
  also: ['spray', 'fumes', 'ventilation', 'fresh air'],
}

/**
 * Good ventilation against heavy, toxic or flammable vapour: NSEAD, adhesives and fixatives. Nothing toxic for the youngest,
 * and that children under 12 cannot be relied on to follow the label: California OEHHA, art and craft materials in schools.
 */
export const solvents: Hazard = {
  name: 'solvents',
  words: [
    'contact adhesive',
    'contact glue',
    'contact cement',
    'rubber cement',
    'solvent',
    'solvent glue',
    'white spirit',
    'mineral spirits',
    'methylated spirit',
    'surgical spirit',
    'rubbing alcohol',
    'isopropyl alcohol',
    'alcohol ink',
    'turpentine',
    'acetone',
    'nail varnish remover',
    'nail polish remover',
    'adhesive remover',
    'label remover',
    'sticker remover',
    'paint thinner',
    'lighter fluid',
    'lighter fuel',
    'petrol',
  ],
  not: ['solvent-free glue', 'solvent free glue', 'acetone-free nail polish remover'],
  also: ['fumes', 'vapour', 'vapor', 'ventilation', 'fresh air'],
}

/** Not for children: NSEAD, adhesives and fixatives. What to do about stuck skin and eyes: from memory. */
export const instantGlue: Hazard = {
  name: 'instant-glue',
  words: [
    'superglue',
    'super glue',
    'instant glue',
    'instant adhesive',
    'cyanoacrylate',
    'cyanoacrylate glue',
    'CA glue',
    'gel superglue',
  ],
}

/** Common practice, no source. */
export const resin: Hazard = {
  name: 'resin',
  words: [
    'epoxy',
    'epoxy glue',
    'epoxy resin',
    'two-part glue',
    'two-part adhesive',
    'UV resin',
    'casting resin',
    'liquid resin',
    'resin hardener',
  ],
  alone: ['resin'],
}
