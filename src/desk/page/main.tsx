import './style/colours.css'
import './style/fonts.css'
import './style/page.css'
import { wrap } from 'comlink'
import { render } from 'preact'
import type { Engine } from '../engine/engine.ts'
import { App } from './app.tsx'
import EngineWorker from './worker.ts?worker&inline'

const root = document.getElementById('desk')
const engine = wrap<Engine>(new EngineWorker()) as unknown as Engine
if (root) render(<App engine={engine} />, root)
