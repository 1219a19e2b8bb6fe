// A page with an editor and the keeper, and nothing else: it is bundled for the browser by `open-bench.ts`.
import { history, historyField, redo, undo } from '@codemirror/commands'
import { EditorState } from '@codemirror/state'
import { EditorView } from '@codemirror/view'
import { signal } from '@preact/signals'
import { h, render } from 'preact'
import { BothVersions } from '../../../src/desk/page/keeping/both-versions.tsx'
import { downloadsStore } from '../../../src/desk/page/keeping/downloads-store.ts'
import { hearPictures, keepPageOnDrop } from '../../../src/desk/page/keeping/drop-pictures.ts'
import { folderStore } from '../../../src/desk/page/keeping/folder-store.ts'
import { gatherPictures } from '../../../src/desk/page/keeping/gather-pictures.ts'
import { lastFolder, rememberFolder } from '../../../src/desk/page/keeping/pick-folder.ts'
import { settlePictures } from '../../../src/desk/page/keeping/picture-shelf.ts'
import { takePictures } from '../../../src/desk/page/keeping/pictures.ts'
import { startKeeping } from '../../../src/desk/page/keeping/start-keeping.ts'

const fields = { history: historyField }
const told = []
let keeper
const listener = EditorView.updateListener.of(({ docChanged, selectionSet, view }) => {
  if (docChanged || selectionSet) keeper?.changed(view.state.doc.toString())
})
const extensions = [history(), listener]
const view = new EditorView({ parent: document.querySelector('#editor'), extensions })
const stateOf = (text, json) => {
  try {
    const state = EditorState.fromJSON(json, { extensions }, fields)
    if (state.doc.toString() === text) return state
  } catch {}
  return EditorState.create({ doc: text, extensions })
}
let stands = false
const page = {
  show(text, state) {
    stands = true
    view.setState(stateOf(text, state))
  },
  replace: (text) => view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text } }),
  text: () => (stands ? view.state.doc.toString() : undefined),
  state: () => view.state.toJSON(fields),
  clear() {
    stands = false
  },
  say: (words) => told.push(words),
}

const kind = new URLSearchParams(location.search).get('store')
const opened = await startKeeping(
  page,
  async (database) =>
    kind === 'downloads'
      ? downloadsStore(database)
      : folderStore(await navigator.storage.getDirectory(), 'bench'),
  settlePictures,
)
keeper = opened.keeper
const { database } = opened
const desk = {
  pictures: signal({}),
  look: signal(undefined),
  get text() {
    return { value: view.state.doc.toString() }
  },
  get cursor() {
    return { value: view.state.selection.main.head }
  },
  edit: (edits) => view.dispatch({ changes: edits }),
  say: page.say,
}
const select = (anchor, head) => view.dispatch({ selection: { anchor, head } })
const take = (files) => takePictures({ desk, keeper, database, select }, files)
keepPageOnDrop()
hearPictures(view.dom, (files) => {
  globalThis.taking = take(files)
})
gatherPictures(desk, keeper, database)
const Both = () => h(BothVersions, { keeper })
render(h(Both), document.querySelector('#both'))

Object.assign(globalThis, {
  keeper,
  database,
  desk,
  view,
  undo: () => undo(view),
  redo: () => redo(view),
  take,
  lastFolder: () => lastFolder(database),
  rememberFolder: (handle) => rememberFolder(database, handle),
  said: () => told.splice(0),
  /** Another program writes a file of the folder. */
  async write(path, text) {
    const folder = await navigator.storage.getDirectory()
    const stream = await (await folder.getFileHandle(path, { create: true })).createWritable()
    await stream.write(text)
    await stream.close()
  },
  async read(path) {
    const folder = await navigator.storage.getDirectory()
    return (await (await folder.getFileHandle(path)).getFile()).text()
  },
  ready: true,
})
