import './style/colours.css'
import './style/fonts.css'
import './style/page.css'
import { wrap } from 'comlink'
import { render } from 'preact'
import type { Engine } from '../engine/engine.ts'
import { App } from './app.tsx'
import { keepDesk } from './keep-desk.ts'
import { newDesk } from './new-desk.ts'
import EngineWorker from './worker.ts?worker&inline'

const desk = newDesk(wrap<Engine>(new EngineWorker()) as unknown as Engine)
const root = document.getElementById('desk')
void keepDesk(desk).then((kept) => {
  if (root) render(<App desk={desk} {...kept} />, root)
})
