import { learnAll } from '../../wording/languages.ts'
import { logoIn } from './brand.ts'
import { classFileFor, classOf, lessonsOfClass } from './class.ts'
import { completionsAt } from './complete/completions.ts'
import type { Engine } from './engine.ts'
import { explainAt } from './explain/explain-at.ts'
import { foldPicture, foldsOffered } from './folds.ts'
import { formAt } from './form/card-form.ts'
import { changeAt } from './form/change.ts'
import { lookAt, type PageTheme } from './look.ts'
import { makeFiles } from './make.ts'
import { motionOf } from './motion.ts'
import { renamableAt, renameAt } from './rename/rename.ts'
import { sizesOf } from './sizes.ts'
import { starterIn } from './starter.ts'

/** The themes that the page has, made into functions. */
export interface Themes {
  /** @param page `handout`, `size-chart`, `sheets` or another one of its pages. */
  page<View extends object>(theme: string, page: string): { css: string; body: (view: View) => string }
  /** How it shows handouts, on pages as it prints them. */
  handout(theme: string): PageTheme
}

/** The engine of the page, which runs in a worker. */
export function makeEngine(themes: Themes): Engine {
  learnAll()
  return {
    look: async (text, settings, beside) => lookAt(text, settings, beside, themes),
    logoIn: async (text) => logoIn(text),
    complete: async (text, at, settings) => completionsAt(text, at, settings),
    explain: async (text, at, settings) => explainAt(text, at, settings),
    rename: async (text, at, to) => renameAt(text, at, to),
    renamable: async (text, at) => renamableAt(text, at),
    form: async (text, card) => formAt(text, card),
    change: async (text, card, change) => changeAt(text, card, change),
    folds: async () => foldsOffered(),
    foldPicture: async (fold, units) => foldPicture(fold, units),
    starter: async (fold, units) => {
      const text = starterIn(fold, units)
      if (text === undefined) throw new RangeError(`There is no fold \`${fold}\``)
      return text
    },
    sizes: async (text, settings, beside) =>
      sizesOf(text, settings, beside, themes.page(settings.theme, 'size-chart')),
    motion: async (text, settings) => motionOf(text, settings),
    classOf: async (asked, settings) => classOf(asked, settings, themes),
    lessonsOfClass: async (text) => lessonsOfClass(text),
    classFileFor: async (text, path, settings) => classFileFor(text, path, settings),
    make: async (text, settings, what, beside, fonts) =>
      makeFiles(text, settings, what, { themes, beside, fonts }),
  }
}
