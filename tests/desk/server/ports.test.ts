import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { networkInterfaces } from 'node:os'
import { afterAll, expect, test } from 'vitest'
import { isUsable, listen, usualPort } from '../../../src/desk/server/ports.ts'
import { ask, someDesk, someFolder } from './desk.ts'

const taken: Server[] = []
afterAll(async () => {
  for (const server of taken) {
    const closed = new Promise((done) => server.close(done))
    server.closeAllConnections()
    await closed
  }
})

test('two desks are at two ports, as near to the usual one as they can', async () => {
  const servers = [1, 2].map(() => createServer((_, response) => response.end()))
  taken.push(...servers)
  const ports: number[] = []
  for (const server of servers) ports.push(await listen(server))
  const [one = 0, two = 0] = ports
  expect(one).toBeGreaterThanOrEqual(usualPort)
  expect(two).toBeGreaterThan(one)
  expect(two).toBeLessThan(usualPort + 20)
})

test('the word of one desk opens no other', async () => {
  const [one, two] = [await someDesk(someFolder()), await someDesk(someFolder())]
  expect((await ask(two, '/api/about', { headers: { authorization: `Bearer ${one.token}` } })).status).toBe(
    401,
  )
})

test('a port that is asked for and taken is told', async () => {
  const server = createServer()
  taken.push(server)
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const { port } = server.address() as AddressInfo
  await expect(someDesk(someFolder(), { port })).rejects.toMatchObject({
    name: 'OutsideError',
    message: `Port ${port} is taken by another program`,
    suggestion: 'Choose another, or leave `--port` out: then the next free one is taken',
  })
})

/** Node asks for no page at a port that the Fetch Standard blocks, and says so before it connects. */
const isBad = (port: number): Promise<boolean> =>
  fetch(`http://127.0.0.1:${port}/`, { signal: AbortSignal.timeout(2000) }).then(
    () => false,
    (error: Error) => String(error.cause).includes('bad port'),
  )

test('no desk is where browsers open no page', async () => {
  const refused = Array.from({ length: 65_536 - 1024 }, (_, i) => i + 1024).filter((port) => !isUsable(port))
  expect(refused.length).toBeGreaterThan(10)
  for (const port of refused) expect([port, await isBad(port)]).toEqual([port, true])
  for (let port = usualPort; port < usualPort + 20; port++)
    expect([port, await isBad(port)]).toEqual([port, !isUsable(port)])
  for (const port of [0, 80, 443, 1023, 65_536]) expect(isUsable(port)).toBe(false)
})

test('nobody else in the network reaches the desk', async () => {
  const desk = await someDesk(someFolder())
  const others = Object.values(networkInterfaces())
    .flat()
    .filter((one) => one && !one.internal && one.family === 'IPv4')
  for (const other of others)
    await expect(fetch(`http://${other?.address}:${desk.port}/`)).rejects.toMatchObject({
      cause: { code: 'ECONNREFUSED' },
    })
  await expect(fetch(`http://127.0.0.2:${desk.port}/`)).rejects.toMatchObject({
    cause: { code: 'ECONNREFUSED' },
  })
})
