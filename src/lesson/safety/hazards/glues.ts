import type { Hazard } from '../hazard.ts'

/** Good ventilation: NSEAD, adhesives and fixatives. That what comes out burns, and the face: common practice, no source. */
export const sprays: Hazard = {
  name: 'sprays',
  title: 'Sprays',
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
  caution:
    'Spray stays in the air, where it is breathed in and can catch fire. Use it outside or where there is plenty of fresh air, far from flames and hot tools, with the nozzle away from faces, and let it settle before anyone leans over it.',
  children: 'An adult sprays, before the children come or out of their room.',
}

/**
 * Good ventilation against heavy, toxic or flammable vapour: NSEAD, adhesives and fixatives. Nothing toxic for the youngest,
 * and that children under 12 cannot be relied on to follow the label: California OEHHA, art and craft materials in schools.
 */
export const solvents: Hazard = {
  name: 'solvents',
  title: 'Solvents and contact glue',
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
  caution:
    'The vapour makes you dizzy, can be poisonous and can catch fire. Work with plenty of fresh air, keep flames and hot tools away, keep it off the skin, and shut the bottle at once.',
  children: 'It is for adults only: children get a water-based glue.',
}

/** Not for children: NSEAD, adhesives and fixatives. What to do about stuck skin and eyes: from memory. */
export const instantGlue: Hazard = {
  name: 'instant-glue',
  title: 'Instant glue',
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
  caution:
    'Instant glue sticks skin and eyelids within seconds. Protect the eyes, use a drop, and keep the tube upright. Never pull stuck skin apart: soak it in warm soapy water, and get medical help for an eye or a lip.',
  children: 'It is for adults only.',
}

/** Common practice, no source. */
export const resin: Hazard = {
  name: 'resin',
  title: 'Resin',
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
  caution:
    'Resin that has not set irritates the skin and can start an allergy for life. Wear gloves that the maker names, work with plenty of fresh air, wash off splashes at once, and do not look into a curing lamp.',
  children: 'It is for adults only; children touch it when it has set hard.',
}
