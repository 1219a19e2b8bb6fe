import { learnAll } from '../src/wording/languages.ts'

// As in the library: what is tested answers at once.
learnAll()
