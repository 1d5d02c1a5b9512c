import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer, type Server } from 'node:net'
import type { NetworkInterfaceInfo } from 'node:os'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { networkAddress, startLines } from '../../lib/commands/addresses.mjs'
import { isInstalled } from '../../lib/commands/installedPackages.mjs'
import { stampOf, stampOfSources } from '../../lib/commands/sourceStamp.mjs'
import {
  makeDataFolder,
  readDataFolder,
  readPort,
  readPublicAddress,
  requireFreePort,
  requireNode,
} from '../../lib/commands/startSettings.mjs'

const serve = path.join(import.meta.dirname, '../../lib/commands/serve.mjs')

let folder: string
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'mearing-start-'))
})
afterEach(() => {
  rmSync(folder, { recursive: true, force: true })
})

/** Starts the command with settings that it must refuse. */
function refusedStart(settings: Record<string, string>) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [serve], {
    env: { ...process.env, MEARING_DATA: path.join(folder, 'data'), MEARING_URL: '', ...settings },
    encoding: 'utf8',
    timeout: 20_000,
  })
  return { status, stdout, stderr }
}

/** Listens on a port of the system's choice. */
async function listenSomewhere(): Promise<{ server: Server; port: number }> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, resolve))
  const address = server.address()
  if (typeof address !== 'object' || address === null) throw new Error('No port was given.')
  return { server, port: address.port }
}

describe('the port', () => {
  test.each(['0', '65536', '-1', '3.5', '3000x', 'three thousand', '1e3', '0x10'])(
    '%s is refused',
    (setting) => {
      expect(() => readPort(setting)).toThrow(
        `PORT must be a whole number from 1 to 65535; it is “${setting}”.`,
      )
    },
  )

  test.each([
    [undefined, 3000],
    ['', 3000],
    [' 8080 ', 8080],
    ['1', 1],
    ['65535', 65535],
  ])('%s means %i', (setting, port) => {
    expect(readPort(setting)).toBe(port)
  })

  test('the command refuses a wrong one with one plain sentence', () => {
    const { status, stdout, stderr } = refusedStart({ PORT: '70000' })

    expect(stderr).toBe('PORT must be a whole number from 1 to 65535; it is “70000”.\n')
    expect(stdout).toBe('')
    expect(status).toBe(1)
  })

  test('the command refuses one in use with one plain sentence, before it prepares anything', async () => {
    const { server, port } = await listenSomewhere()
    const { status, stdout, stderr } = refusedStart({ PORT: String(port) })
    server.close()

    expect(stderr).toMatch(new RegExp(`^Port ${port} is in use by another program\\. .*\n$`))
    expect(stdout).toBe('')
    expect(status).toBe(1)
  })

  test('in use on one address only is in use all the same', async () => {
    const server = createServer()
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    const address = server.address()
    const port = typeof address === 'object' && address !== null ? address.port : 0

    await expect(requireFreePort(port)).rejects.toThrow(`Port ${port} is in use`)

    await new Promise((resolve) => server.close(resolve))
    await expect(requireFreePort(port)).resolves.toBeUndefined()
  })
})

describe('the Node release', () => {
  test.each(['18.20.8', '20.18.3', '20.9.0', '8.0.0'])('%s is too old', (version) => {
    expect(() => requireNode(version)).toThrow(`needs Node 20.19 or later; this is Node ${version}`)
  })

  test.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0', '100.0.0'])('%s will do', (version) => {
    expect(() => requireNode(version)).not.toThrow()
  })
})

describe('the data folder', () => {
  test('is the folder data of the project where nothing is set', () => {
    expect(readDataFolder(undefined, '/somewhere', '/project')).toBe('/project/data')
    expect(readDataFolder(' ', '/somewhere', '/project')).toBe('/project/data')
  })

  test('is always an absolute path', () => {
    expect(readDataFolder('papers', '/somewhere', '/project')).toBe('/somewhere/papers')
    expect(readDataFolder('/srv/papers/', '/somewhere', '/project')).toBe('/srv/papers')
  })

  test('is refused where a file stands in its place', () => {
    const file = path.join(folder, 'a-file')
    writeFileSync(file, '')

    expect(() => makeDataFolder(file)).toThrow(`The data folder ${file} can't be made.`)
    expect(() => makeDataFolder(path.join(file, 'below'))).toThrow(`can't be made.`)
  })
})

describe('the addresses', () => {
  const address = (ip: string, more: Partial<NetworkInterfaceInfo> = {}) =>
    ({ address: ip, family: 'IPv4', internal: false, ...more }) as NetworkInterfaceInfo
  const interfaces = {
    lo: [address('127.0.0.1', { internal: true })],
    eth0: [address('fe80::1', { family: 'IPv6' } as Partial<NetworkInterfaceInfo>), address('169.254.7.7')],
    wlan0: [address('192.168.1.20'), address('10.0.0.4')],
  }

  test('another device reaches the first one that is IPv4, not internal and given by the network', () => {
    expect(networkAddress(interfaces)).toBe('192.168.1.20')
    expect(networkAddress({ lo: interfaces.lo })).toBeUndefined()
  })

  test('are printed with the port, and the data folder with them', () => {
    const lines = startLines({ port: 8080, publicAddress: undefined, interfaces, dataFolder: '/srv/papers' })

    expect(lines.join('\n')).toContain('http://localhost:8080\n')
    expect(lines.join('\n')).toContain('http://192.168.1.20:8080\n')
    expect(lines.join('\n')).toContain('/srv/papers\n')
  })

  test('the one in MEARING_URL goes before the one found', () => {
    const publicAddress = readPublicAddress('https://fence.example/')
    const lines = startLines({ port: 8080, publicAddress, interfaces, dataFolder: '/srv/papers' }).join('\n')

    expect(lines).toContain('https://fence.example\n')
    expect(lines).not.toContain('192.168.1.20')
  })

  test('without a network the start says so', () => {
    const start = { port: 8080, publicAddress: undefined, interfaces: {}, dataFolder: '/srv/papers' }
    expect(startLines(start).join('\n')).toContain('no network address found')
  })

  test.each(['fence.example', 'ftp://fence.example', 'http://', 'javascript:alert(1)'])(
    'MEARING_URL %s is refused',
    (setting) => {
      expect(() => readPublicAddress(setting)).toThrow('MEARING_URL must be a web address')
    },
  )
})

describe('a stamp', () => {
  const files = [
    { name: 'app/page.tsx', content: 'one' },
    { name: 'lib/core/split.ts', content: 'two' },
  ]

  test('does not depend on the order in which files are found', () => {
    expect(stampOf([...files].reverse())).toBe(stampOf(files))
  })

  test.each([
    ['a content changed', [{ name: 'app/page.tsx', content: 'One' }, ...files.slice(1)]],
    ['a file was renamed', [{ name: 'app/pages.tsx', content: 'one' }, ...files.slice(1)]],
    ['a file is gone', files.slice(1)],
    ['a file was added', [...files, { name: 'lib/core/new.ts', content: '' }]],
    [
      'contents moved between files',
      [
        { name: 'app/page.tsx', content: 'two' },
        { name: 'lib/core/split.ts', content: 'one' },
      ],
    ],
  ])('is another one when %s', (_what, changed) => {
    expect(stampOf(changed)).not.toBe(stampOf(files))
  })

  test('takes in every file below a folder, but no editor’s dot file', () => {
    mkdirSync(path.join(folder, 'lib/core'), { recursive: true })
    writeFileSync(path.join(folder, 'package.json'), '{}')
    writeFileSync(path.join(folder, 'lib/core/split.ts'), 'two')
    const sources = ['package.json', 'lib', 'not-there']
    const before = stampOfSources(folder, sources)

    writeFileSync(path.join(folder, 'lib/core/.split.ts.swp'), 'x')
    expect(stampOfSources(folder, sources)).toBe(before)

    writeFileSync(path.join(folder, 'lib/core/share.ts'), 'three')
    expect(stampOfSources(folder, sources)).not.toBe(before)
  })
})

describe('packages count as installed', () => {
  const wanted = {
    packages: {
      '': { version: '0.1.0' },
      'node_modules/plank': { version: '1.0.0', integrity: 'sha512-a' },
      'node_modules/plank-for-another-machine': { version: '1.0.0', integrity: 'sha512-b', optional: true },
    },
  }
  const plank = { version: '1.0.0', integrity: 'sha512-a' }

  test('when npm’s own record holds each that this machine needs', () => {
    expect(isInstalled(wanted, { packages: { 'node_modules/plank': plank } })).toBe(true)
  })

  test.each([
    ['nothing was ever installed', undefined],
    ['one is missing', { packages: {} }],
    ['one has another version', { packages: { 'node_modules/plank': { ...plank, version: '1.0.1' } } }],
    ['one has other contents', { packages: { 'node_modules/plank': { ...plank, integrity: 'sha512-c' } } }],
    ['one is left over', { packages: { 'node_modules/plank': plank, 'node_modules/nail': plank } }],
  ])('but not when %s', (_what, installed) => {
    expect(isInstalled(wanted, installed)).toBe(false)
  })
})
