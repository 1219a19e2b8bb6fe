#!/usr/bin/env node
import type * as keptCode from './kept-code.ts'

// An import of Node's own parts would make it bring along more than it needs to start.
const require = process.getBuiltinModule('node:module').createRequire(import.meta.url)
const { runKept }: typeof keptCode = require('./kept-code.cjs')
runKept(require.resolve('./program.cjs'))
