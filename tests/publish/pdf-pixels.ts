import { readFileSync } from 'node:fs'
import type { Browser } from 'puppeteer-core'

const script = (name: string): string =>
  readFileSync(new URL(import.meta.resolve(`pdfjs-dist/build/${name}`)), 'utf8')

/** The pixels of a picture, four bytes each. */
export interface Pixels {
  readonly data: Uint8ClampedArray
  readonly width: number
  readonly height: number
}

/** The upper right part of the first page of a PDF, half as wide and half as high, as pixels drawn by pdf.js in a browser. */
export async function pdfPixels(browser: Browser, pdf: Uint8Array, dpi: number): Promise<Pixels> {
  const page = await browser.newPage()
  try {
    await page.setContent('<canvas></canvas>')
    for (const name of ['pdf.worker.min.mjs', 'pdf.min.mjs'])
      await page.addScriptTag({ content: script(name), type: 'module' })
    await page.waitForFunction('globalThis.pdfjsLib && globalThis.pdfjsWorker')
    const drawn = await page.evaluate(`(async () => {
      const data = Uint8Array.from(atob('${Buffer.from(pdf).toString('base64')}'), (c) => c.charCodeAt(0))
      const page = await (await pdfjsLib.getDocument({ data }).promise).getPage(1)
      const whole = page.getViewport({ scale: ${dpi / 72} })
      const viewport = page.getViewport({ scale: ${dpi / 72}, offsetX: -whole.width / 2 })
      const canvas = document.querySelector('canvas')
      canvas.width = whole.width / 2
      canvas.height = whole.height / 2
      await page.render({ canvas, viewport }).promise
      return canvasPixels(canvas)
    })()
    ${canvasPixels}`)
    return unpacked(drawn as Packed)
  } finally {
    await page.close()
  }
}

/** A PNG as pixels. */
export async function pngPixels(browser: Browser, png: Uint8Array): Promise<Pixels> {
  const page = await browser.newPage()
  try {
    await page.setContent(`<img src="data:image/png;base64,${Buffer.from(png).toString('base64')}">`)
    const drawn = await page.evaluate(`(async () => {
      const image = document.querySelector('img')
      await image.decode()
      const canvas = document.createElement('canvas')
      canvas.width = image.naturalWidth
      canvas.height = image.naturalHeight
      canvas.getContext('2d').drawImage(image, 0, 0)
      return canvasPixels(canvas)
    })()
    ${canvasPixels}`)
    return unpacked(drawn as Packed)
  } finally {
    await page.close()
  }
}

interface Packed {
  readonly base64: string
  readonly width: number
  readonly height: number
}

const canvasPixels = `function canvasPixels(canvas) {
  const { data, width, height } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height)
  let text = ''
  for (let i = 0; i < data.length; i += 32768) text += String.fromCharCode(...data.subarray(i, i + 32768))
  return { base64: btoa(text), width, height }
}`

const unpacked = ({ base64, width, height }: Packed): Pixels => ({
  data: new Uint8ClampedArray(Buffer.from(base64, 'base64')),
  width,
  height,
})
