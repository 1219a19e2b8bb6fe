import { describe, expect, test } from 'vitest'
import { dangersIn } from '../../../src/lesson/safety/danger.ts'
import { hazards } from '../../../src/lesson/safety/hazards.ts'
import { ways } from '../../../src/lesson/safety/ways.ts'
import { wordsOf } from '../../../src/lesson/safety/words.ts'
import type { Locale } from '../../../src/wording/locales.ts'

const namesIn = (locale: Locale, text: string, as: 'step' | 'item' = 'step', children = false): string[] =>
  dangersIn(text, { as, children, locale }).map(({ hazard }) => hazard.name)

const other = ['de', 'fr', 'es'] as const
describe.each(other.flatMap((locale) => hazards.map((hazard) => [locale, hazard.name, hazard] as const)))(
  'in %s: %s',
  (locale, name, hazard) => {
    const { words, alone = [], forChildren = [], not = [] } = wordsOf(hazard, locale)
    const plain = (word: string) => word.replace(/^-/, '')

    test('every word of it names it in a list', () => {
      for (const word of [...words, ...alone])
        expect(namesIn(locale, plain(word), 'item'), word).toContain(name)
      for (const word of forChildren) {
        expect(namesIn(locale, plain(word), 'item'), word).not.toContain(name)
        expect(namesIn(locale, plain(word), 'item', true), word).toContain(name)
      }
      for (const word of not) expect(namesIn(locale, plain(word), 'item'), word).not.toContain(name)
    })

    test('no word stands there twice', () => {
      expect(words.filter((word, i) => words.indexOf(word) !== i)).toEqual([])
    })
  },
)

describe('German', () => {
  test.each([
    [
      'blades',
      ['ein Bastelmesser', 'die BASTELMESSER', 'mit den Cuttermessern', 'ein Skalpell', 'das Cutter-Messer'],
    ],
    ['trimmers', ['die Schneidemaschine', 'ein Rollenschneider', 'der Hebelschneider']],
    ['points', ['eine Stopfnadel', 'Stecknadeln', 'die Ahle', 'mit der Prickelnadel', 'Reißzwecken']],
    ['punches', ['den Motivlocher', 'eine Ösenzange', 'mit dem Hammer', 'die Prägemaschine', 'Stanzformen']],
    ['wire', ['Blumendraht', 'zwei Drähte', 'mit Basteldraht']],
    ['film', ['eine Klarsichtfolie', 'Acetatfolie', 'Windradfolie']],
    ['heat', ['den Embossingföhn', 'Heißluftpistole', 'mit dem Buegeleisen', 'ein Lötkolben']],
    ['hot-glue', ['die Heißklebepistole', 'Heissklebepistole', 'Heißkleber']],
    ['flames', ['eine Kerze', 'Teelichter', 'Streichhölzer', 'Siegelwachs', 'ein Feuerzeug']],
    ['sprays', ['Sprühkleber', 'Haarspray', 'Fixativ']],
    ['solvents', ['Kontaktkleber', 'Waschbenzin', 'Terpentin', 'Nagellackentferner', 'Brennspiritus']],
    ['instant-glue', ['Sekundenkleber', 'Superkleber']],
    ['resin', ['Epoxidharz', 'UV-Harz', 'Zwei-Komponenten-Kleber']],
    ['powders', ['Embossingpulver', 'feiner Glitzer', 'Glitter']],
    [
      'small-parts',
      ['Halbperlen', 'zwei Knöpfe', 'Wackelaugen', 'Musterklammern', 'Pailletten', 'Strasssteine'],
    ],
    ['magnets', ['ein Scheibenmagnet', 'Neodym-Magnete', 'Magnetverschlüsse']],
    ['button-cells', ['eine Knopfzelle', 'CR2032', 'LED-Teelichter', 'die Lichterkette']],
    ['balloons', ['einen Luftballon', 'Luftballons']],
    ['allergies', ['Gummibänder', 'Latexhandschuhe', 'Walnussschalen', 'Federn', 'Eierkartons']],
  ])('%s is named', (name, texts) => {
    for (const text of texts) expect(namesIn('de', `Nimm ${text}.`), text).toContain(name)
  })

  test.each([
    'Den Durchmesser messen',
    'Mit dem Winkelmesser messen',
    'Mit dem Buttermesser glatt streichen',
    'Die Strahlen des Lichts zeichnen',
    'Die Löcher liegen auf der Linie',
    'Die Zahlen ablesen',
    'Fest anpressen',
    'Die lose Dose',
    'Das Papier löst sich, vorsichtig lösen',
    'Die Tannennadel aus Papier',
    'Mit dem Klebestift aufkleben',
    'Mit dem Falzbein nachfahren',
    'Genussvoll und schnell',
    'Ein harter Karton, härter als Papier',
    'Die böse Möwe',
    'Glitzerkleber',
    'Magnetfolie',
    'Einen Papierballon aufkleben',
    'Eine Kerze zeichnen',
    'Eine kleine Kerze aufmalen',
    'Ballon-Sticker',
    'Ein schwarzer Streifen',
    'Die Häuser an der Straße',
    'In gleichen Distanzen, ohne Substanzen',
    'Viel Charme',
    'Mit Schneeflocken bemalen',
    'Den Anhänger zuschneiden',
    'Mit der Schere schneiden',
    'Ohne Messer reißen',
    'Kein scharfes Messer nehmen',
    'Statt eines Messers die Schere nehmen',
    'Nie Sekundenkleber nehmen',
    'Ein Messer ist nicht nötig',
  ])('nothing is named by: %s', (text) => {
    expect(namesIn('de', `${text}.`)).toEqual([])
  })

  test('what is used all the same', () => {
    expect(namesIn('de', 'Nicht zu fest mit dem Messer drücken.')).toEqual(['blades'])
    expect(namesIn('de', 'Die Perlen aufkleben und bemalen.')).toEqual(['small-parts'])
  })
})

describe('French', () => {
  test.each([
    ['blades', ['le cutter', 'des cutters', 'un couteau de précision', 'd’un scalpel', 'les couteaux']],
    ['trimmers', ['le massicot', 'une cisaille', 'la rogneuse']],
    ['points', ["l'aiguille", 'd’aiguilles', 'le poinçon', 'des épingles', 'un EPINGLE']],
    [
      'punches',
      ['la perforatrice', 'des emporte-pièces', 'un marteau', 'la machine de découpe', 'les matrices'],
    ],
    ['wire', ['du fil de fer', 'des fils métalliques', 'du fil de laiton']],
    ['film', ['une feuille d’acétate', 'du film plastique', 'du rhodoïd']],
    ['heat', ['le pistolet chauffant', 'un fer à repasser', 'l’embosseur thermique', 'avec un fer']],
    ['hot-glue', ['le pistolet à colle', 'des pistolets à colle', 'de la colle chaude']],
    ['flames', ['une bougie', 'des allumettes', 'la cire à cacheter', 'un briquet']],
    ['sprays', ['la colle en bombe', 'un aérosol', 'du fixatif', 'les aerosols']],
    ['solvents', ['la colle néoprène', 'du white-spirit', 'de l’acétone', 'du dissolvant']],
    ['instant-glue', ['la superglue', 'de la colle instantanée']],
    ['resin', ['de la résine époxy', 'la résine']],
    ['powders', ['la poudre à embosser', 'des paillettes']],
    [
      'small-parts',
      ['des demi-perles', 'un bouton', 'des yeux mobiles', 'des attaches parisiennes', 'les œillets'],
    ],
    ['magnets', ['un aimant', 'des aimants néodyme', 'une fermeture magnétique']],
    ['button-cells', ['une pile bouton', 'des piles bouton', 'des bougies LED', 'CR2032']],
    ['balloons', ['un ballon', 'des ballons de baudruche']],
    ['allergies', ['des élastiques', 'une coquille d’œuf', 'des plumes', 'des coques de noix']],
  ])('%s is named', (name, texts) => {
    for (const text of texts) expect(namesIn('fr', `Prendre ${text}.`), text).toContain(name)
  })

  test.each([
    'Mesurer le diamètre',
    'La pointe de pin, les aiguilles de pin',
    'Passer le plioir',
    'Un bâton de colle',
    'Du ruban adhésif transparent',
    'Du papier perlé',
    'Colle à paillettes',
    'Une feuille aimantée',
    'Dessiner une bougie',
    'Un ballon en papier',
    'Un tampon bougie',
    'Découper avec des ciseaux',
    'Sans cutter',
    'Au lieu d’un cutter, des ciseaux',
    'Ne pas utiliser de colle chaude',
    'Un cutter n’est pas nécessaire',
    'Plier à fond et presser',
    'Une noisette de colle',
    'Un bouton d’or',
    'Couper le fil à coudre',
  ])('nothing is named by: %s', (text) => {
    expect(namesIn('fr', `${text}.`)).toEqual([])
  })

  test('what is used all the same', () => {
    expect(namesIn('fr', 'Ne pas appuyer fort avec le cutter.')).toEqual(['blades'])
    expect(namesIn('fr', 'Pas de ruban sous le cutter.')).toEqual(['blades'])
  })
})

describe('Spanish', () => {
  test.each([
    ['blades', ['el cúter', 'los cúteres', 'un cutter', 'el bisturí', 'cuchillas']],
    ['trimmers', ['la cizalla', 'una guillotina']],
    ['points', ['una aguja', 'los alfileres', 'el punzón', 'chinchetas']],
    ['punches', ['la perforadora', 'un martillo', 'la troqueladora', 'los troqueles']],
    ['wire', ['alambre fino', 'alambres', 'hilo de cobre']],
    ['film', ['un acetato', 'lámina de plástico', 'láminas de acetato']],
    ['heat', ['la pistola de calor', 'con una plancha', 'el soldador']],
    ['hot-glue', ['la pistola de silicona', 'pistolas de silicona', 'cola caliente']],
    ['flames', ['una vela', 'cerillas', 'el lacre', 'un mechero']],
    ['sprays', ['adhesivo en espray', 'los aerosoles', 'espráis']],
    ['solvents', ['cola de contacto', 'aguarrás', 'acetona', 'disolventes']],
    ['instant-glue', ['superpegamento', 'pegamento instantáneo']],
    ['resin', ['resina epoxi', 'resina']],
    ['powders', ['polvos de embossing', 'purpurina']],
    [
      'small-parts',
      ['medias perlas', 'botones', 'ojos móviles', 'lentejuelas', 'abalorios', 'con una cuenta'],
    ],
    ['magnets', ['un imán', 'imanes', 'un cierre magnético']],
    ['button-cells', ['una pila de botón', 'pilas de botón', 'luces LED', 'CR2032']],
    ['balloons', ['un globo', 'globos']],
    ['allergies', ['gomas elásticas', 'guantes de látex', 'cáscaras de nuez', 'plumas']],
  ])('%s is named', (name, texts) => {
    for (const text of texts) expect(namesIn('es', `Tomar ${text}.`), text).toContain(name)
  })

  test.each([
    'Medir el diámetro',
    'Tener en cuenta el grosor',
    'Se cuenta desde el borde',
    'Pasar la plegadera',
    'Una barra de pegamento',
    'Agujas de pino',
    'Cola con purpurina',
    'Una lámina magnética',
    'Dibujar una vela',
    'Un globo de papel',
    'Un sello de vela',
    'Cortar con tijeras',
    'Sin cúter',
    'En lugar de un cúter, unas tijeras',
    'No usar cola caliente',
    'El cúter no hace falta',
    'Cortar la hoja por la mitad',
    'Planchas de goma eva',
  ])('nothing is named by: %s', (text) => {
    expect(namesIn('es', `${text}.`)).toEqual([])
  })

  test('what is used all the same', () => {
    expect(namesIn('es', 'No apretar mucho con el cúter.')).toEqual(['blades'])
  })
})

test('only the words of the language of a lesson are looked for', () => {
  expect(namesIn('de', 'Take the knife.')).toEqual([])
  expect(namesIn('en-GB', 'Das Messer nehmen.')).toEqual([])
  expect(namesIn('en-US', 'Take the knife.')).toEqual(['blades'])
})

test.each([
  ['de', 'Eine erwachsene Person hilft.', 'Das Wachs ist heiß.'],
  ['fr', 'Un adulte surveille.', 'La cire est chaude.'],
  ['es', 'Vigila una persona adulta.', 'La cera quema.'],
] as const)('that an adult is spoken of is read in %s', (locale, says, not) => {
  expect([ways[locale].adult.test(says), ways[locale].adult.test(not)]).toEqual([true, false])
})
