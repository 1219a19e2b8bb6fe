import { readFile, writeFile } from 'node:fs/promises'
import { withManual } from './manual.ts'

// Run by `npm run manual` in the project's folder.
await writeFile('README.md', withManual(await readFile('README.md', 'utf8')))
