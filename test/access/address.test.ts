import type { NetworkInterfaceInfo } from 'node:os'
import { expect, test } from 'vitest'
import { addressFrom } from '../../lib/access/address.ts'

// Addresses for documentation: RFC 5737 (192.0.2.0/24, 198.51.100.0/24) and RFC 3849 (2001:db8::/32).
function ipv4(address: string, internal = false): NetworkInterfaceInfo {
  return { address, internal, family: 'IPv4', netmask: '255.255.255.0', mac: '00:00:00:00:00:00', cidr: null }
}

const ipv6: NetworkInterfaceInfo = {
  address: '2001:db8::7',
  internal: false,
  family: 'IPv6',
  netmask: 'ffff:ffff:ffff:ffff::',
  mac: '00:00:00:00:00:00',
  cidr: null,
  scopeid: 0,
}

const interfaces = {
  lo: [ipv4('127.0.0.1', true)],
  lan: [ipv6, ipv4('192.0.2.7')],
  other: [ipv4('198.51.100.9')],
}

test('the address that was set counts, without spaces and slashes at its end', () => {
  const setting = ' https://fence.example/mearing// '
  expect(addressFrom({ setting, port: '8080', interfaces })).toBe('https://fence.example/mearing')
})

test('else it is the machine’s first IPv4 address that other devices can reach, at the port it listens on', () => {
  expect(addressFrom({ setting: undefined, port: '8080', interfaces })).toBe('http://192.0.2.7:8080')
})

test('an empty setting and an empty port count as none', () => {
  expect(addressFrom({ setting: ' ', port: '', interfaces })).toBe('http://192.0.2.7:3000')
})

test('a machine without a network is reached at itself', () => {
  const none = { lo: interfaces.lo, gone: undefined, six: [ipv6] }
  expect(addressFrom({ setting: undefined, port: undefined, interfaces: none })).toBe('http://localhost:3000')
})
