import type { Engine } from '../engine/engine.ts'

export function App(_: { readonly engine: Engine }) {
  return <main>foldlore</main>
}
