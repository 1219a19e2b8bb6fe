import { inches } from '../../src/length/length.ts'
import { bridgeBlock, lessonWith, supply } from './lesson-with.ts'

/** A whole lesson's worth of supplies, of every kind of amount. */
export const harbour = (unit: 'in' | 'mm' = 'in') =>
  lessonWith(
    { card: bridgeBlock },
    {
      each: [
        supply('pearl dots', { kind: 'count', count: 5 }),
        supply('double-sided tape', { kind: 'length', length: inches(34) }),
        supply('glue', { kind: 'text', text: 'a little' }),
      ],
      shared: [
        supply('scoring board', { kind: 'per', count: 1, people: 3 }),
        supply('craft knife', { kind: 'per', count: 1, people: 2 }),
        supply('pencil', { kind: 'per', count: 2, people: 3 }),
        supply('kettle', { kind: 'count', count: 1 }),
        supply('masking tape', { kind: 'length', length: inches(40) }),
      ],
      tutor: [
        supply('finished sample', { kind: 'count', count: 1 }),
        supply('pearl dots', { kind: 'count', count: 10 }),
        supply('double-sided tape', { kind: 'length', length: inches(68) }),
      ],
    },
    unit,
  )
