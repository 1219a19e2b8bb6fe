import { connect } from 'node:net'
import { beforeAll, expect, test } from 'vitest'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { ask, put, someDesk, someFolder } from './desk.ts'

let desk: OpenDesk
beforeAll(async () => {
  desk = await someDesk(someFolder())
})

const about = (headers: Record<string, string>) => ask(desk, '/api/about', { headers })

test('the page itself may ask, by either name of this computer', async () => {
  const host = `localhost:${desk.port}`
  const own = { origin: `http://127.0.0.1:${desk.port}`, 'sec-fetch-site': 'same-origin' }
  expect([(await about(own)).status, (await about({ host, origin: `http://${host}` })).status]).toEqual([
    200, 200,
  ])
})

test('a foreign name that leads to this computer is refused, for the page and for what is behind it', async () => {
  for (const host of [
    'harbour.example',
    `harbour.example:${desk.port}`,
    '127.0.0.1',
    `127.0.0.1:${desk.port + 1}`,
    `127.0.0.1.harbour.example:${desk.port}`,
    `[::1]:${desk.port}`,
  ])
    for (const path of ['/', '/api/about']) {
      const { status, body } = await ask(desk, path, { headers: { host } })
      expect([host, path, status, body.includes('Desk')]).toEqual([host, path, 421, false])
    }
})

test('a request without any host is refused', async () => {
  const said = await new Promise<string>((done) => {
    let text = ''
    const socket = connect(desk.port, '127.0.0.1', () => socket.write('GET / HTTP/1.0\r\n\r\n'))
    socket.on('data', (part) => {
      text += part
    })
    socket.on('close', () => done(text))
  })
  expect(said).toMatch(/^HTTP\/1\.1 421 /)
})

test('a page of another origin is refused, and so is one that hides its origin', async () => {
  const [own, other] = [desk.port, desk.port + 1]
  for (const origin of [
    'https://harbour.example',
    `http://127.0.0.1:${other}`,
    `http://localhost:${own}`,
    `https://127.0.0.1:${own}`,
    'null',
  ])
    expect([origin, (await about({ origin })).status]).toEqual([origin, 403])
})

test('another site, or another program on this computer, may not lead to the desk', async () => {
  for (const site of ['cross-site', 'same-site'])
    for (const path of ['/', '/api/about'])
      expect((await ask(desk, path, { headers: { 'sec-fetch-site': site } })).status).toBe(403)
  expect((await ask(desk, '/', { headers: { 'sec-fetch-site': 'none' } })).status).toBe(200)
})

test('nothing is said to whoever does not know the word of this start', async () => {
  const half = desk.token.slice(0, 20)
  for (const authorization of [
    '',
    'Bearer',
    'Bearer ',
    `Bearer ${half}`,
    `Bearer ${desk.token}x`,
    `Basic ${desk.token}`,
    `bearer ${desk.token}`,
    `Bearer ${desk.token.toLowerCase()}`,
  ])
    for (const path of [
      '/api/about',
      '/api/files',
      '/api/file?path=a.md',
      '/api/changes',
      '/api/picture?lesson=a.md&address=b.png',
    ]) {
      const { status, json } = await ask(desk, path, { headers: { authorization } })
      expect([authorization, path, status]).toEqual([authorization, path, 401])
      expect(json()).toEqual({
        refused: 'This page was opened before the desk was started anew',
        suggestion: 'Open the address that `foldlore desk` shows when it starts',
      })
    }
})

test('each start has a word of its own, that nobody guesses', async () => {
  const other = await someDesk(someFolder())
  expect(desk.token).toMatch(/^[\w-]{43}$/)
  expect(other.token).not.toBe(desk.token)
  expect(desk.address).toBe(`http://127.0.0.1:${desk.port}/#${desk.token}`)
})

test('what is not done somewhere says what is', async () => {
  const methods: [string, string, string][] = [
    ['POST', '/', 'GET, HEAD'],
    ['DELETE', '/api/file?path=a.md', 'GET, PUT'],
    ['PATCH', '/api/file?path=a.md', 'GET, PUT'],
    ['OPTIONS', '/api/file?path=a.md', 'GET, PUT'],
    ['PUT', '/api/picture?lesson=a.md&name=b', 'GET, POST'],
    ['GET', '/api/print', 'POST'],
    ['POST', '/api/changes', 'GET'],
    ['POST', '/api/about', 'GET'],
  ]
  for (const [method, path, allowed] of methods) {
    const { status, headers } = await ask(desk, path, { method })
    expect([method, path, status, headers.allow]).toEqual([method, path, 405, allowed])
  }
})

test('nothing else is there', async () => {
  for (const path of [
    '/desk.html',
    '/package.json',
    '/api',
    '/api/',
    '/api/constructor',
    '/api/__proto__',
    '/../',
    '//',
    '/%2e%2e/',
    '/lessons/a.md',
    'http://127.0.0.1/',
  ])
    expect([path, (await ask(desk, path)).status]).toEqual([path, 404])
})

test('the page may load nothing that its policy does not say, and no other page may show it', async () => {
  const { headers, body } = await ask(desk, '/')
  expect(body.toString()).toContain('<title>Desk</title>')
  expect(headers).toMatchObject({
    'content-type': 'text/html; charset=utf-8',
    'content-security-policy': "default-src 'none'; connect-src 'self'; frame-ancestors 'none'",
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'cache-control': 'no-store',
  })
  const answer = (await about({})).headers
  expect(answer['content-security-policy']).toBe("default-src 'none'; frame-ancestors 'none'; sandbox")
  expect([answer['access-control-allow-origin'], answer['x-content-type-options']]).toEqual([
    undefined,
    'nosniff',
  ])
})

test('a body of the wrong kind is refused: a form of another page can send no other', async () => {
  const asking = (type: string) =>
    ask(desk, '/api/file?path=a.md', {
      method: 'PUT',
      headers: { 'content-type': type },
      body: '{"text":"a"}',
    })
  for (const type of [
    '',
    'text/plain',
    'application/x-www-form-urlencoded',
    'multipart/form-data; boundary=a',
    'application/jsonx',
  ])
    expect([type, (await asking(type)).status]).toEqual([type, 415])
  expect((await asking('application/json; charset=utf-8')).status).toBe(200)
})

test('a body that is none is told', async () => {
  for (const body of ['', '{', '[]', '"a"', 'null', '{}', '{"text":1}', '{"text":"a","over":1}'])
    expect([body, (await ask(desk, '/api/file?path=b.md', { method: 'PUT', body })).status]).toEqual([
      body,
      400,
    ])
})

test('a lesson, and a body, that is too large is refused in words', async () => {
  const words = 'That is more than 2 MB, too much for a lesson'
  const lesson = await put(desk, 'large.md', 'a'.repeat(2_000_001))
  expect([lesson.status, lesson.json().refused]).toEqual([413, words])
  const body = await put(desk, 'large.md', 'a'.repeat(9_000_000))
  expect([body.status, body.json().refused]).toEqual([413, 'That is more than 4 MB, too much for a lesson'])
  expect((await put(desk, 'large.md', '\n'.repeat(2_000_000))).status).toBe(200)
})

test('a body that says it is enormous is not waited for', async () => {
  const headers = { 'content-length': '900000000' }
  const asked = ask(desk, '/api/file?path=c.md', { method: 'PUT', headers, body: '{' })
  expect((await asked).status).toBe(413)
})

test('a body that does not arrive is not waited for', async () => {
  const { port, token } = await someDesk(someFolder(), { slowest: 300 })
  const said = await new Promise<string>((done) => {
    let text = ''
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(
        `PUT /api/file?path=slow.md HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nAuthorization: Bearer ${token}\r\nContent-Type: application/json\r\nContent-Length: 100\r\n\r\n{"te`,
      )
    })
    socket.on('data', (part) => {
      text += part
    })
    socket.on('close', () => done(text))
  })
  expect(said).toMatch(/^HTTP\/1\.1 408 /)
  expect(said).toContain('What was sent did not arrive in time')
})
