#!/usr/bin/env node
import { join } from 'node:path'
import { runKept } from './kept-code.ts'

runKept(join(__dirname, 'program.cjs'))
