import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pictureEdit, whatItShows } from '../../../src/desk/page/keeping/picture-edit.ts'
import { freePictureName, plainPictureName } from '../../../src/desk/page/keeping/picture-name.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const lesson = `---
title: Pier
---

A card.

\`\`\`card
fold: bridge
closed: 7 x 5 in
\`\`\`

1. Cut the base.

2. Fold it.
`

const put = (text: string, at: number): { text: string; selected: string } => {
  const { edit, from, to } = pictureEdit(text, at, 'pier.jpg')
  const after = text.slice(0, edit.from) + edit.insert + text.slice(edit.to)
  return { text: after, selected: after.slice(from, to) }
}

/** Addresses of all pictures that stand in the lesson when it is read. */
const picturesOf = (text: string): string[] => {
  const found: string[] = []
  const walk = (node: { type: string; url?: string; children?: unknown[] }): void => {
    if (node.type === 'image' && node.url) found.push(node.url)
    for (const child of node.children ?? []) walk(child as typeof node)
  }
  walk(readLesson(text).tree as Parameters<typeof walk>[0])
  return found
}

describe('a picture that is put in', () => {
  it('is a picture of the lesson wherever the cursor is, and loses no word', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: lesson.length }), (at) => {
        const { text, selected } = put(lesson, at)
        expect(selected).toBe(whatItShows)
        expect(picturesOf(text)).toEqual(['pier.jpg'])
        expect(text.replace(/\s*!\[what it shows\]\(pier\.jpg\)\s*/, '').replace(/\s/g, '')).toBe(
          lesson.replace(/\s/g, ''),
        )
      }),
    )
  })

  it('in a card block comes behind the block', () => {
    const at = lesson.indexOf('closed')
    expect(put(lesson, at).text).toContain('```\n\n![what it shows](pier.jpg)\n\n1. Cut')
  })

  it('in a sentence keeps its distance from the words', () => {
    expect(put('Cut it.', 7).text).toBe('Cut it. ![what it shows](pier.jpg)')
    expect(put('Cut it.', 4).text).toBe('Cut ![what it shows](pier.jpg) it.')
    expect(put('', 0).text).toBe('![what it shows](pier.jpg)')
  })
})

describe('the name of a picture', () => {
  it.each([
    ['Été am Meer (2).HEIC', 'image/jpeg', 'ete-am-meer-2.jpg'],
    ['../../etc/passwd', 'image/png', 'etc-passwd.png'],
    ['IMG_0042.JPG', 'image/jpeg', 'img-0042.jpg'],
    ['写真.png', 'image/png', 'picture.png'],
    ['', 'image/jpeg', 'picture.jpg'],
  ])('%j is plain', (name, type, plain) => {
    expect(plainPictureName(name, type)).toBe(plain)
  })

  it('is plain whatever the file was called', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(plainPictureName(name, 'image/png')).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.png$/)
      }),
    )
  })

  it('is never one that is taken', () => {
    const taken = new Set(['pier.jpg', 'pier-2.jpg'])
    expect(freePictureName('pier.jpg', (name) => taken.has(name))).toBe('pier-3.jpg')
  })
})
