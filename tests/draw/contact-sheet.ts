import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { PDFDocument } from '@cantoo/pdf-lib'
import { toHtml } from 'hast-util-to-html'
import type { Page } from 'puppeteer-core'
import { drawFigure } from '../../src/draw/draw.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { type FigureKind, figureKinds } from '../../src/lesson/nodes.ts'
import { type Draw, fitFigure, rooms } from '../../src/publish/figure.ts'
import { fontFaces } from '../../src/publish/fonts.ts'
import { escapeHtml } from '../../src/publish/html-text.ts'
import { startBrowser, stopBrowser } from '../../src/publish/launch.ts'
import { lessonNamed, lessonNames, printsOf } from './lesson-cards.ts'

/**
 * Writes every kind of figure of every lesson at its true size, one page a lesson, in colour and in grey, as an HTML page,
 * as PDF and as pictures: to be looked at.
 */
const out = process.argv[2] ?? 'out'

/** What each kind of figure of a card can be of. */
function subjectsOf({ card }: ProvenCard, show: FigureKind): (string | undefined)[] {
  const { pieces } = card.structure
  switch (show) {
    case 'flat':
      return pieces.map((piece) => piece.name)
    case 'place':
      return [...card.layers, ...pieces.filter((piece) => piece.kind === 'span')].map((part) => part.name)
    case 'lettering':
      return card.lettering.map((one) => one.name)
    case 'envelope':
      return card.envelope ? [undefined] : []
    case 'sheet':
      return []
    default:
      return [undefined]
  }
}

/** A figure in the room that the page gives it, with its name and size below. */
function cellOf(card: ProvenCard, show: FigureKind, of: string | undefined, key: string): string {
  const draw: Draw = (kind, name, options) => drawFigure(kind, card, name, card.card.unit, options)
  const fitted = fitFigure(draw, show, of, { key })
  const name = `${show}${of === undefined ? '' : ` of ${of}`}`
  if ('findings' in fitted)
    return `<div class="cell"><p>${escapeHtml(`${name}: ${fitted.findings.map((f) => f.message).join(' ')}`)}</p></div>`
  const { figure } = fitted
  const said = `${name}, ${figure.width.toFixed(1)} × ${figure.height.toFixed(1)} mm`
  return `<div class="cell" title="${escapeHtml(figure.alternative)}">${toHtml(figure.svg)}<p>${escapeHtml(said)}</p></div>`
}

function sectionOf(name: string, at: number): string {
  const lesson = lessonNamed(name)
  const own = printsOf(lesson, 1).find(({ unit }) => unit === lesson.frontMatter.units)
  const cells = (own?.cards ?? []).flatMap((card, c) =>
    figureKinds.flatMap((show) =>
      subjectsOf(card, show).map((of, i) => cellOf(card, show, of, `l${at}c${c}${show}${i}`)),
    ),
  )
  return `<section id="${name}"><h1>${escapeHtml(lesson.frontMatter.title)}</h1><div class="cells">${cells.join('\n')}</div></section>`
}

/** Four figures beside a step's text fit the width of a page. */
const width = 4 * rooms.beside.maxWidth + 3 * 6 + 2 * 10

const style = `*{box-sizing:border-box;margin:0}
html{font:9pt/1.4 "Commissioner Variable";color:#1d2a30;background:#fff;print-color-adjust:exact}
.grey body{filter:grayscale(1)}
section{width:${width}mm;padding:10mm}
h1{font-size:16pt;font-weight:500;margin-bottom:5mm}
.cells{display:flex;flex-wrap:wrap;gap:8mm 6mm;align-items:flex-end}
.cell p{color:#2f5d73;margin-top:1.5mm;max-width:${rooms.beside.maxWidth}mm}
svg{display:block}`

const body = lessonNames.map(sectionOf).join('\n')
const fonts = await fontFaces(style, body)
const page = (grey: boolean): string =>
  `<!doctype html><html lang="en"${grey ? ' class="grey"' : ''}><meta charset="utf-8"><title>Figures of the lessons</title><style>${fonts}${style}</style><body>${body}</body></html>`

const pictureOf = (name: string, grey: boolean): string =>
  join(out, `figures-${name}${grey ? '-grey' : ''}.png`)

/** Photographs each lesson's figures, and gives the heights of their pages in mm. */
async function photograph(tab: Page, grey: boolean): Promise<number[]> {
  await tab.setViewport({ width: Math.ceil((width / 25.4) * 96), height: 1200, deviceScaleFactor: 1.5 })
  await tab.setContent(page(grey))
  await tab.evaluate('document.fonts.ready.then(() => {})')
  for (const name of lessonNames) await (await tab.$(`#${name}`))?.screenshot({ path: pictureOf(name, grey) })
  return (await tab.evaluate(
    `[...document.querySelectorAll('section')].map((s) => Math.ceil(s.getBoundingClientRect().height / 96 * 25.4) + 1)`,
  )) as number[]
}

/** Each lesson on one page, as high as its figures need. */
async function print(tab: Page, heights: readonly number[]): Promise<Uint8Array> {
  const pages = heights.map(
    (height, i) =>
      `@page s${i}{size:${width}mm ${height}mm;margin:0}section:nth-of-type(${i + 1}){page:s${i};break-after:page}`,
  )
  await tab.addStyleTag({ content: pages.join('\n') })
  return tab.pdf({ preferCSSPageSize: true, printBackground: true })
}

/** The same pages in grey, made of their pictures: a browser takes minutes to print what is turned grey. */
async function greyPdf(heights: readonly number[]): Promise<Uint8Array> {
  const pdf = await PDFDocument.create()
  const points = (mm: number): number => (mm / 25.4) * 72
  for (const [i, name] of lessonNames.entries()) {
    const [w, h] = [points(width), points(heights[i] ?? 0)]
    const picture = await pdf.embedPng(await readFile(pictureOf(name, true)))
    const high = (picture.height / picture.width) * w
    pdf.addPage([w, h]).drawImage(picture, { x: 0, y: h - high, width: w, height: high })
  }
  return pdf.save()
}

await mkdir(out, { recursive: true })
await writeFile(join(out, 'figures.html'), page(false))
const browser = await startBrowser()
try {
  const tab = await browser.newPage()
  const heights = await photograph(tab, false)
  await writeFile(join(out, 'figures.pdf'), await print(tab, heights))
  await writeFile(
    join(out, 'figures-grey.pdf'),
    await greyPdf(await photograph(await browser.newPage(), true)),
  )
} finally {
  await stopBrowser(browser)
}
process.stdout.write(`Wrote the figures of ${lessonNames.length} lessons to ${out}\n`)
