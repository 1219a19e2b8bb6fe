import { filled } from '../lesson.ts'

/** A tool that a caution is called for by, in each language. */
const knives = { de: 'Bastelmesser', fr: 'cutter', es: 'cúter' } as const
export const foreign = Object.keys(knives) as (keyof typeof knives)[]
export type Foreign = (typeof foreign)[number]

/** A lesson whose own words are in no language, with as much as there can be in one. */
export const inventedText = (lang: Foreign, units: 'in' | 'mm' = 'mm'): string => `---
title: Zwemba
summary: Zwemba ond vuli.
level: advanced
units: ${units}
lang: ${lang}
time: 95 min
sizes: [A6 landscape, 200 x 150 mm]
video: https://zwemba.example/zwemba
credits: Vuli ond zwemba.
---

Vuli zwemba ond. ![Vuli](https://zwemba.example/vuli.png)

\`\`\`card zwemba
fold: bridge
closed: 203 x 152 mm
leg: 25 mm
base: {stock: vorma, weight: 300 gsm}
layers:
  blixo: {on: floor, border: {sides: 2 mm, ends: 0 mm}, stock: quorra, direction: upright}
spans:
  zaffel: {height: 60 mm, at: top, stock: quorra}
  wurbo: {height: 30 mm, at: bottom, stock: vorma}
lettering:
  zilla: {on: wurbo, letters: XQZ, widths: 16 mm, margin: 6 mm}
envelope: {make: diagonal, clearance: 6 mm, stock: quorra}
\`\`\`

\`\`\`card ondra
fold: twist easel
closed: 140 x 140 mm
envelope: {make: side seam, clearance: 6 mm, stock: quorra}
\`\`\`

\`\`\`supplies
each:
  vibbo: 3 drops
  vabbo: 2.5 ml
  vebbo: zwemba.base.width * zwemba.base.height
  vobbo: zwemba.base.height * 4
shared:
  ${knives[lang]}: 1 per 2
  vubbo: 1 per table
tutor:
  vybbo: 1
\`\`\`

## Zwemba

1. Vuli {zwemba.base.size}. :minutes[70]

   :::tip[Ondo]
   Vuli zwemba.
   :::

   ::figure[Vuli ond]{show=flat of=zwemba.base}

2. Vuli {zwemba.base.scores}. :minutes[4] :drying[20 min]

   :::caution
   Ond zwemba.
   :::

   ::figure[Zwemba]{show=place of=blixo}

3. {zwemba.base.width}.

   :::ahead
   Zwemba.
   :::

   ::scan{link="https://zwemba.example/ond"}

4. Zwemba {blixo.size}. :minutes[2]

   :::variation
   Ond.
   :::

   ::figure[Ond]{show=folding of=zwemba.base}

   ::figure[Ond]{show=lettering of=zilla}

   ::figure[Ond]{show=apart of=zwemba}

   ::figure[Ond]{show=edge of=zwemba}

   ::figure[Ond]{show=closed of=zwemba}

   ::figure[Ond]{show=flat of=ondra.base}
`

/** That lesson, as if it had no mistakes: what is wrong in it has been told, and does not matter here. */
export function invented(lang: Foreign, units?: 'in' | 'mm') {
  const lesson = filled(inventedText(lang, units))
  return { ...lesson, findings: [] }
}
