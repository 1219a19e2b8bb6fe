import type { DeedWords } from './deed-words.ts'

/** Spanish: `Cortar la base`, `Corta la base`, `Corte la base`. */
export const es: DeedWords = {
  verbs: {
    cut: 'cortar',
    shape: 'recortar redondear rasgar troquelar perforar agujerear acortar calar',
    score: 'hender hendir',
    fold: 'doblar plegar desplegar desdoblar curvar',
    stick: 'pegar encolar fijar sujetar grapar coser unir',
    lay: `poner colocar meter insertar introducir deslizar enhebrar colgar atar anudar centrar alinear situar
      aplicar`,
    write: 'escribir dibujar trazar colorear pintar estampar marcar decorar numerar rotular',
    turn: 'girar voltear dar+la+vuelta',
  },
  called: (verb) => [
    verb,
    verb.replace(/ar$/, 'a').replace(/er$|ir$/, 'e'),
    verb.replace(/ar$/, 'e').replace(/er$|ir$/, 'a'),
    verb.replace(/r$/, 'd'),
  ],
  ending: /\p{Ll}(?:ar|er|ir)(?:l[aeo]s?|se)?$/u,
  noVerbs: 'lugar mar ayer taller papel cualquier primer tercer par familiar circular',
  verbLast: false,
  prepositions: 'a al de del en con por para sobre bajo tras desde hasta contra entre hacia según sin',
  onto: 'a al en sobre bajo tras contra entre',
  pronouns: 'lo la los las le les se ello ellos ellas',
  several: 'todo todos toda todas piezas capas resto demás',
  small: `el la los las un una unos unas y e o u luego después también ahora otra vez de del a al en lo se
    primero × x`,
  and: 'y e o u luego después',
  notDone: 'no sin antes si hasta cuando para',
}
