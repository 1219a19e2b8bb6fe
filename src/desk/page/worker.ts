import { expose } from 'comlink'
import { makeEngine } from '../engine/make-engine.ts'
import { themeHandout, themePage } from './themes.ts'

expose(makeEngine({ page: themePage, handout: themeHandout }))
