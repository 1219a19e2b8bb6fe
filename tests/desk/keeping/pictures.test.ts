import type { Browser, Page } from 'puppeteer-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { startDeskBrowser } from '../open-desk.ts'
import { exifSegment, readJpeg } from './jpeg.ts'
import { ask, openBench, serveBench } from './open-bench.ts'

let bench: Awaited<ReturnType<typeof serveBench>>
let browser: Browser
let page: Page

beforeAll(async () => {
  bench = await serveBench()
  browser = await startDeskBrowser()
  page = await openBench(browser, bench.address)
})
afterAll(async () => {
  await browser.close()
  await bench.close()
})

/** A picture drawn in the page, with its left half red and its right half blue, in base 64. */
const drawn = (width: number, height: number, type: string, clear = false): Promise<string> =>
  ask(
    page,
    `new Promise((resolve) => {
      const canvas = document.createElement('canvas')
      canvas.width = ${width}
      canvas.height = ${height}
      const pen = canvas.getContext('2d')
      pen.fillStyle = 'red'
      pen.fillRect(0, 0, ${width / 2}, ${height})
      pen.fillStyle = 'blue'
      ${clear ? '' : `pen.fillRect(${width / 2}, 0, ${width / 2}, ${height})`}
      canvas.toBlob((blob) => {
        const reader = new FileReader()
        reader.onload = () => resolve(reader.result.split(',')[1])
        reader.readAsDataURL(blob)
      }, '${type}')
    })`,
  )

const file = (bytes: Uint8Array, name: string, type: string): string =>
  `new File([Uint8Array.from(atob('${Buffer.from(bytes).toString('base64')}'), (c) => c.charCodeAt(0))], ${JSON.stringify(name)}, { type: '${type}' })`

let number = 0
/** A lesson of its own for each test. */
const open = async (): Promise<void> => {
  const path = `lesson-${++number}.md`
  await ask(page, `write('${path}', 'The pier\\n')`)
  await ask(page, `keeper.open('${path}')`)
  await ask(page, 'view.dispatch({ selection: { anchor: view.state.doc.length - 1 } })')
  await ask(page, 'said()')
}

/** Bytes of a file in the folder. */
const stored = async (name: string): Promise<Buffer> =>
  Buffer.from(
    await ask<string>(
      page,
      `keeper.store.value.picture('lesson.md', '${name}').then((address) => address.split(',')[1])`,
    ),
    'base64',
  )

it('a photograph is made upright and smaller, and what the camera wrote beside it is gone', async () => {
  await open()
  const jpeg = Buffer.from(await drawn(2400, 1800, 'image/jpeg'), 'base64')
  // Orientation 6: the camera was held upright, and the left of what is stored is the top.
  const photo = Buffer.concat([jpeg.subarray(0, 2), exifSegment(6), jpeg.subarray(2)])
  expect(photo.includes('Quillhaven')).toBe(true)
  expect(readJpeg(photo)).toMatchObject({ width: 2400, height: 1800 })
  await ask(page, `take([${file(photo, 'IMG 0042 (Pier).JPG', 'image/jpeg')}])`)
  expect(await ask(page, 'view.state.doc.toString()')).toBe('The pier ![what it shows](img-0042-pier.jpg)\n')
  expect(
    await ask(page, 'view.state.sliceDoc(view.state.selection.main.from, view.state.selection.main.to)'),
  ).toBe('what it shows')
  const made = await stored('img-0042-pier.jpg')
  const told = readJpeg(made)
  expect([told.width, told.height]).toEqual([1200, 1600])
  expect(told.markers).not.toContain(0xffe1)
  expect(made.includes('Quillhaven') || made.includes('Exif')).toBe(false)
  const top = await ask<number[]>(
    page,
    `(async () => {
      const image = new Image()
      image.src = desk.pictures.value['img-0042-pier.jpg']
      await image.decode()
      const canvas = document.createElement('canvas')
      canvas.width = image.naturalWidth
      canvas.height = image.naturalHeight
      const pen = canvas.getContext('2d')
      pen.drawImage(image, 0, 0)
      return [...pen.getImageData(600, 100, 1, 1).data]
    })()`,
  )
  expect(top[0]).toBeGreaterThan(200)
  expect(top[2]).toBeLessThan(60)
})

it('a picture that lets something show through stays so, and a small one keeps its size', async () => {
  await open()
  const png = Buffer.from(await drawn(300, 200, 'image/png', true), 'base64')
  await ask(page, `take([${file(png, 'Stencil.png', 'image/png')}])`)
  const made = await stored('stencil.png')
  expect(made.subarray(1, 4).toString('latin1')).toBe('PNG')
  expect([made.readUInt32BE(16), made.readUInt32BE(20)]).toEqual([300, 200])
  // Colour type 6: with an alpha channel (PNG specification, 11.2.2).
  expect(made[25]).toBe(6)
})

it('a picture never takes the place of another one', async () => {
  await open()
  const png = Buffer.from(await drawn(30, 20, 'image/png', true), 'base64')
  const one = file(png, 'boat.png', 'image/png')
  await ask(page, `take([${one}, ${one}])`)
  const text = await ask<string>(page, 'view.state.doc.toString()')
  expect(text).toBe('The pier ![what it shows](boat.png) ![what it shows](boat-2.png)\n')
})

it('what is no picture is refused in plain words, and the lesson stays as it is', async () => {
  await open()
  await ask(page, `take([${file(Buffer.from('not a picture'), 'notes.jpg', 'image/jpeg')}])`)
  expect(await ask(page, 'said()')).toEqual([
    'notes.jpg was not put in: it is no picture that this browser can read. A JPEG or PNG file can be used.',
  ])
  expect(await ask(page, 'view.state.doc.toString()')).toBe('The pier\n')
})

it('a drawing with a script in it becomes plain pixels', async () => {
  await open()
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="20" height="10"><script>globalThis.ran = true</script>
<rect width="20" height="10" fill="green"/></svg>`
  await ask(page, `take([${file(Buffer.from(svg), 'plan.svg', 'image/svg+xml')}])`)
  const text = await ask<string>(page, 'view.state.doc.toString()')
  const name = /\(([^)]+)\)/.exec(text)?.[1] ?? ''
  expect(name).toMatch(/^plan\.(png|jpg)$/)
  expect((await stored(name)).includes('script')).toBe(false)
  expect(await ask(page, 'globalThis.ran')).toBeUndefined()
})

it.each(['drop', 'paste'])('a picture comes in by %s', async (kind) => {
  await open()
  const png = Buffer.from(await drawn(30, 20, 'image/png', true), 'base64')
  await ask(
    page,
    `(() => {
      const dataTransfer = new DataTransfer()
      dataTransfer.items.add(${file(png, `by ${kind}.png`, 'image/png')})
      const wish = { bubbles: true, cancelable: true }
      view.contentDOM.dispatchEvent(
        '${kind}' === 'drop'
          ? new DragEvent('drop', { ...wish, dataTransfer })
          : new ClipboardEvent('paste', { ...wish, clipboardData: dataTransfer }),
      )
      return taking
    })()`,
  )
  expect(await ask(page, 'view.state.doc.toString()')).toBe(`The pier ![what it shows](by-${kind}.png)\n`)
})

it('a picture of a lesson in no folder goes beside its file when it is saved', async () => {
  const png = Buffer.from(await drawn(30, 20, 'image/png', true), 'base64')
  // A picture of this name is in the folder already.
  await ask(page, "write('gull.png', 'another picture')")
  await ask(page, "keeper.begin('The pier\\n', 'new lesson')")
  await ask(page, `take([${file(png, 'gull.png', 'image/png')}])`)
  expect(await ask(page, 'view.state.doc.toString()')).toContain('(gull.png)')
  await page.reload()
  await page.waitForFunction('globalThis.ready')
  await ask(page, 'keeper.resume()')
  await ask(page, "void (desk.look.value = { pictures: ['gull.png'] })")
  await page.waitForFunction("desk.pictures.value['gull.png']?.startsWith('data:image/png')")
  expect(await ask(page, 'keeper.save()')).toBe('saved')
  expect(await ask(page, "read('new-lesson.md')")).toContain('(gull-2.png)')
  expect(await ask(page, "read('gull.png')")).toBe('another picture')
  expect((await stored('gull-2.png')).subarray(1, 4).toString('latin1')).toBe('PNG')
})
