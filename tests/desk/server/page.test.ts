import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { deskPage, policyOf } from '../../../src/desk/server/page.ts'
import { disk } from '../../../src/publish/outside.ts'
import { ask, someDesk, someFolder } from './desk.ts'

test('a page that has not been built is told, with the cure', async () => {
  await expect(deskPage(disk, someFolder())).rejects.toMatchObject({
    name: 'OutsideError',
    message: 'The page of the desk is missing: `dist/desk.html`',
    suggestion: 'Install foldlore again, or run `npm run build` in its folder',
  })
})

test('a page that is taken away while the desk is open is told, and comes back when it is built again', async () => {
  const root = someFolder()
  const desk = await someDesk(someFolder(), { page: () => deskPage(disk, root) })
  const { status, json } = await ask(desk, '/')
  expect([status, json().refused]).toEqual([500, 'The page of the desk is missing: `dist/desk.html`'])
  mkdirSync(join(root, 'dist'))
  writeFileSync(join(root, 'dist/desk.html'), '<title>Again</title>')
  const again = await ask(desk, '/')
  expect([again.status, again.body.toString()]).toEqual([200, '<title>Again</title>'])
})

test('the policy is that of the page, and nobody may show it inside another', () => {
  const page = (policy: string) => `<meta http-equiv="Content-Security-Policy" content="${policy}">`
  expect(policyOf(page("default-src 'none'; img-src data:;"))).toBe(
    "default-src 'none'; img-src data:; frame-ancestors 'none'",
  )
  expect(policyOf(page('default-src &#39;none&#39;\nx\r\n'))).toBe(
    "default-src 'none' x; frame-ancestors 'none'",
  )
  expect(policyOf('<title>None</title>')).toBe("default-src 'none'; frame-ancestors 'none'")
})
