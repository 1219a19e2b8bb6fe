import load from 'highs-as-it-is'
import packed from 'highs-wasm'

/** The solver of cutting plans as the page has it: its WebAssembly stands in the page, packed. */
export default async function loadHighs(): Promise<unknown> {
  const bytes = Uint8Array.from(atob(packed), (c) => c.charCodeAt(0))
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))
  const wasm = await new Response(stream).arrayBuffer()
  return load({
    instantiateWasm(imports: WebAssembly.Imports, done: (instance: WebAssembly.Instance) => void) {
      void WebAssembly.instantiate(wasm, imports).then(({ instance }) => done(instance))
    },
  })
}
